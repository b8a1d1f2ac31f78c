-- Calls: about which cage and what, whether somebody answered, and what was agreed until when.

CREATE TABLE phone_call (
    entry BIGINT NOT NULL CONSTRAINT fk_phone_call_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT CONSTRAINT fk_phone_call_cage REFERENCES cage (entry),
    who VARCHAR(80) NOT NULL,
    matter VARCHAR(4000) NOT NULL,
    reached VARCHAR(20) NOT NULL,
    agreed VARCHAR(4000),
    last_day DATE,
    person VARCHAR(80) NOT NULL,
    clock TIME,
    note VARCHAR(4000),
    CONSTRAINT pk_phone_call PRIMARY KEY (entry, n)
);
CREATE INDEX phone_call_day ON phone_call (day);
