-- What becomes of eggs and chicks, how a nest looked, and how a pair is parted.
-- An egg is known by its round and the mark on its shell; what is told of it leans on it, and what is told of its chick
-- leans on its hatching.

ALTER TABLE egg ADD COLUMN laid DATE;
ALTER TABLE ring_stock ADD COLUMN form VARCHAR(80);
ALTER TABLE ring_spoilt ADD COLUMN why VARCHAR(20);
CREATE INDEX egg_cage ON egg (cage, day DESC);

CREATE TABLE sitting (
    entry BIGINT NOT NULL CONSTRAINT fk_sitting_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_sitting_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL CONSTRAINT fk_sitting_round REFERENCES round (entry),
    CONSTRAINT pk_sitting PRIMARY KEY (entry, n)
);

CREATE TABLE candling (
    entry BIGINT NOT NULL CONSTRAINT fk_candling_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_candling_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    finding VARCHAR(20) NOT NULL,
    CONSTRAINT pk_candling PRIMARY KEY (entry, n),
    CONSTRAINT fk_candling_egg FOREIGN KEY (round, mark) REFERENCES egg (round, mark)
);

CREATE TABLE pip (
    entry BIGINT NOT NULL CONSTRAINT fk_pip_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_pip_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    CONSTRAINT pk_pip PRIMARY KEY (entry, n),
    CONSTRAINT fk_pip_egg FOREIGN KEY (round, mark) REFERENCES egg (round, mark),
    CONSTRAINT uq_pip_egg UNIQUE (round, mark)
);

CREATE TABLE removal (
    entry BIGINT NOT NULL CONSTRAINT fk_removal_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_removal_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    why VARCHAR(20) NOT NULL,
    CONSTRAINT pk_removal PRIMARY KEY (entry, n),
    CONSTRAINT fk_removal_egg FOREIGN KEY (round, mark) REFERENCES egg (round, mark),
    CONSTRAINT uq_removal_egg UNIQUE (round, mark)
);

CREATE TABLE nest_move (
    entry BIGINT NOT NULL CONSTRAINT fk_nest_move_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_nest_move_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_nest_move_cage REFERENCES cage (entry),
    letter VARCHAR(80) NOT NULL,
    CONSTRAINT pk_nest_move PRIMARY KEY (entry, n),
    CONSTRAINT fk_nest_move_egg FOREIGN KEY (round, mark) REFERENCES egg (round, mark)
);

CREATE TABLE hatching (
    entry BIGINT NOT NULL CONSTRAINT fk_hatching_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_hatching_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    about BOOLEAN NOT NULL,
    hatched DATE,
    CONSTRAINT pk_hatching PRIMARY KEY (entry, n),
    CONSTRAINT fk_hatching_egg FOREIGN KEY (round, mark) REFERENCES egg (round, mark),
    CONSTRAINT uq_hatching_egg UNIQUE (round, mark)
);

CREATE TABLE ringing (
    entry BIGINT NOT NULL CONSTRAINT fk_ringing_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_ringing_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    ring VARCHAR(80) NOT NULL,
    CONSTRAINT pk_ringing PRIMARY KEY (entry, n),
    CONSTRAINT fk_ringing_hatching FOREIGN KEY (round, mark) REFERENCES hatching (round, mark),
    CONSTRAINT uq_ringing_egg UNIQUE (round, mark),
    CONSTRAINT uq_ringing_ring UNIQUE (ring)
);

CREATE TABLE ring_check (
    entry BIGINT NOT NULL CONSTRAINT fk_ring_check_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_ring_check_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    CONSTRAINT pk_ring_check PRIMARY KEY (entry, n),
    CONSTRAINT fk_ring_check_ringing FOREIGN KEY (round, mark) REFERENCES ringing (round, mark)
);

CREATE TABLE box_trip (
    entry BIGINT NOT NULL CONSTRAINT fk_box_trip_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_box_trip_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    outside BOOLEAN NOT NULL,
    CONSTRAINT pk_box_trip PRIMARY KEY (entry, n),
    CONSTRAINT fk_box_trip_hatching FOREIGN KEY (round, mark) REFERENCES hatching (round, mark)
);

CREATE TABLE chick_mark (
    entry BIGINT NOT NULL CONSTRAINT fk_chick_mark_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_chick_mark_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    trait VARCHAR(20) NOT NULL,
    CONSTRAINT pk_chick_mark PRIMARY KEY (entry, n),
    CONSTRAINT fk_chick_mark_hatching FOREIGN KEY (round, mark) REFERENCES hatching (round, mark)
);

CREATE TABLE chick_loss (
    entry BIGINT NOT NULL CONSTRAINT fk_chick_loss_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_chick_loss_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    dead BOOLEAN NOT NULL,
    likely VARCHAR(4000),
    CONSTRAINT pk_chick_loss PRIMARY KEY (entry, n),
    CONSTRAINT fk_chick_loss_hatching FOREIGN KEY (round, mark) REFERENCES hatching (round, mark)
);

CREATE TABLE weaning (
    entry BIGINT NOT NULL CONSTRAINT fk_weaning_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_weaning_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL,
    mark VARCHAR(80) NOT NULL,
    CONSTRAINT pk_weaning PRIMARY KEY (entry, n),
    CONSTRAINT fk_weaning_hatching FOREIGN KEY (round, mark) REFERENCES hatching (round, mark),
    CONSTRAINT uq_weaning_egg UNIQUE (round, mark)
);

CREATE TABLE parting (
    entry BIGINT NOT NULL CONSTRAINT fk_parting_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_parting_pair REFERENCES pairing (entry),
    reason VARCHAR(20) NOT NULL,
    CONSTRAINT pk_parting PRIMARY KEY (entry, n),
    CONSTRAINT uq_parting_pair UNIQUE (pair)
);

CREATE TABLE stage_skip (
    entry BIGINT NOT NULL CONSTRAINT fk_stage_skip_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_stage_skip_pair REFERENCES pairing (entry),
    stage VARCHAR(20) NOT NULL,
    why VARCHAR(4000) NOT NULL,
    CONSTRAINT pk_stage_skip PRIMARY KEY (entry, n),
    CONSTRAINT uq_stage_skip_stage UNIQUE (pair, stage)
);

CREATE TABLE dummies (
    entry BIGINT NOT NULL CONSTRAINT fk_dummies_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_dummies_cage REFERENCES cage (entry),
    laid INTEGER NOT NULL,
    CONSTRAINT pk_dummies PRIMARY KEY (entry, n)
);

CREATE TABLE nest_look (
    entry BIGINT NOT NULL CONSTRAINT fk_nest_look_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_nest_look_cage REFERENCES cage (entry),
    chicks INTEGER,
    crops VARCHAR(20),
    feet VARCHAR(20),
    damp BOOLEAN,
    plucked BOOLEAN,
    CONSTRAINT pk_nest_look PRIMARY KEY (entry, n)
);

CREATE TABLE split_ring (
    entry BIGINT NOT NULL CONSTRAINT fk_split_ring_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_split_ring_bird REFERENCES bird (entry),
    ring VARCHAR(80),
    CONSTRAINT pk_split_ring PRIMARY KEY (entry, n)
);
