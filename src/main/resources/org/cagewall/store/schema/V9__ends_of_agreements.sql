-- What was agreed in a call is over from that day on.

CREATE TABLE agreement_end (
    entry BIGINT NOT NULL CONSTRAINT fk_agreement_end_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    call_entry BIGINT NOT NULL,
    CONSTRAINT pk_agreement_end PRIMARY KEY (entry, n)
);
CREATE INDEX agreement_end_call ON agreement_end (call_entry);
