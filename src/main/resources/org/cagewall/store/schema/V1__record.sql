-- The first schema of the record.
-- Entries are only ever inserted. Each kind of fact has a table of its own; its columns are the components of the
-- record of that name. Tables stand in the order in which they lean on each other. A text column is twice as wide as
-- its text may be long, since a character beyond the basic plane of Unicode takes two places.

CREATE TABLE head (
    id SMALLINT NOT NULL CONSTRAINT pk_head PRIMARY KEY CONSTRAINT ck_head_one CHECK (id = 1),
    number BIGINT NOT NULL,
    digest CHAR(64) NOT NULL,
    code CHAR(3) NOT NULL,
    zone VARCHAR(60) NOT NULL
);

CREATE TABLE entry (
    number BIGINT NOT NULL CONSTRAINT pk_entry PRIMARY KEY,
    touch BIGINT NOT NULL,
    recorded VARCHAR(30) NOT NULL,
    person VARCHAR(80) NOT NULL,
    deed VARCHAR(30) NOT NULL,
    day DATE NOT NULL,
    line VARCHAR(32672) NOT NULL,
    digest CHAR(64) NOT NULL
);
CREATE INDEX entry_day ON entry (day DESC, number DESC);
CREATE INDEX entry_touch ON entry (touch);

CREATE TABLE strike (
    entry BIGINT NOT NULL CONSTRAINT pk_strike PRIMARY KEY CONSTRAINT fk_strike_entry REFERENCES entry (number),
    struck BIGINT NOT NULL CONSTRAINT uq_strike_struck UNIQUE CONSTRAINT fk_strike_struck REFERENCES entry (number),
    why VARCHAR(4000) NOT NULL
);

CREATE TABLE mention (
    entry BIGINT NOT NULL CONSTRAINT fk_mention_entry REFERENCES entry (number),
    kind CHAR(4) NOT NULL CONSTRAINT ck_mention_kind CHECK (kind IN ('CAGE', 'BIRD')),
    id BIGINT NOT NULL,
    CONSTRAINT pk_mention PRIMARY KEY (entry, kind, id)
);
CREATE INDEX mention_of ON mention (kind, id, entry DESC);

CREATE TABLE setting (
    entry BIGINT NOT NULL CONSTRAINT fk_setting_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    name VARCHAR(80) NOT NULL,
    words VARCHAR(4000) NOT NULL,
    CONSTRAINT pk_setting PRIMARY KEY (entry, n)
);

CREATE TABLE wall (
    entry BIGINT NOT NULL CONSTRAINT fk_wall_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    name VARCHAR(80) NOT NULL,
    height INTEGER NOT NULL,
    width INTEGER NOT NULL,
    CONSTRAINT pk_wall PRIMARY KEY (entry),
    CONSTRAINT uq_wall_name UNIQUE (name)
);

CREATE TABLE person (
    entry BIGINT NOT NULL CONSTRAINT fk_person_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    name VARCHAR(80) NOT NULL,
    CONSTRAINT pk_person PRIMARY KEY (entry),
    CONSTRAINT uq_person_name UNIQUE (name)
);

CREATE TABLE duty (
    entry BIGINT NOT NULL CONSTRAINT fk_duty_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    person BIGINT NOT NULL CONSTRAINT fk_duty_person REFERENCES person (entry),
    role VARCHAR(20) NOT NULL,
    phone VARCHAR(80),
    CONSTRAINT pk_duty PRIMARY KEY (entry, n)
);

CREATE TABLE climate (
    entry BIGINT NOT NULL CONSTRAINT fk_climate_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    high DECIMAL(6, 1),
    low DECIMAL(6, 1),
    humidity INTEGER,
    lights DECIMAL(6, 1),
    CONSTRAINT pk_climate PRIMARY KEY (entry, n)
);

CREATE TABLE cage (
    entry BIGINT NOT NULL CONSTRAINT fk_cage_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    number INTEGER NOT NULL,
    name VARCHAR(80) NOT NULL,
    CONSTRAINT pk_cage PRIMARY KEY (entry),
    CONSTRAINT uq_cage_name UNIQUE (name),
    CONSTRAINT uq_cage_number UNIQUE (number)
);

CREATE TABLE placement (
    entry BIGINT NOT NULL CONSTRAINT fk_placement_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_placement_cage REFERENCES cage (entry),
    wall BIGINT NOT NULL CONSTRAINT fk_placement_wall REFERENCES wall (entry),
    line INTEGER NOT NULL,
    slot INTEGER NOT NULL,
    CONSTRAINT pk_placement PRIMARY KEY (entry, n)
);

CREATE TABLE purpose (
    entry BIGINT NOT NULL CONSTRAINT fk_purpose_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_purpose_cage REFERENCES cage (entry),
    purpose VARCHAR(20) NOT NULL,
    keeps VARCHAR(20),
    CONSTRAINT pk_purpose PRIMARY KEY (entry, n)
);

CREATE TABLE retirement (
    entry BIGINT NOT NULL CONSTRAINT fk_retirement_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_retirement_cage REFERENCES cage (entry),
    CONSTRAINT pk_retirement PRIMARY KEY (entry, n),
    CONSTRAINT uq_retirement_cage UNIQUE (cage)
);

CREATE TABLE joint (
    entry BIGINT NOT NULL CONSTRAINT fk_joint_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_joint_cage REFERENCES cage (entry),
    partner BIGINT NOT NULL CONSTRAINT fk_joint_partner REFERENCES cage (entry),
    together BOOLEAN NOT NULL,
    CONSTRAINT pk_joint PRIMARY KEY (entry, n)
);

CREATE TABLE feed (
    entry BIGINT NOT NULL CONSTRAINT fk_feed_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_feed_cage REFERENCES cage (entry),
    line INTEGER NOT NULL,
    what VARCHAR(80) NOT NULL,
    amount VARCHAR(80) NOT NULL,
    part VARCHAR(20) NOT NULL,
    CONSTRAINT pk_feed PRIMARY KEY (entry, n)
);

CREATE TABLE routine (
    entry BIGINT NOT NULL CONSTRAINT fk_routine_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_routine_cage REFERENCES cage (entry),
    permission VARCHAR(20),
    CONSTRAINT pk_routine PRIMARY KEY (entry, n)
);

CREATE TABLE cleaning (
    entry BIGINT NOT NULL CONSTRAINT fk_cleaning_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_cleaning_cage REFERENCES cage (entry),
    CONSTRAINT pk_cleaning PRIMARY KEY (entry, n)
);

CREATE TABLE headcount (
    entry BIGINT NOT NULL CONSTRAINT fk_headcount_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_headcount_cage REFERENCES cage (entry),
    birds INTEGER NOT NULL,
    CONSTRAINT pk_headcount PRIMARY KEY (entry, n)
);

CREATE TABLE flock (
    entry BIGINT NOT NULL CONSTRAINT fk_flock_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_flock_cage REFERENCES cage (entry),
    change INTEGER NOT NULL,
    CONSTRAINT pk_flock PRIMARY KEY (entry, n)
);

CREATE TABLE box (
    entry BIGINT NOT NULL CONSTRAINT fk_box_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_box_cage REFERENCES cage (entry),
    step VARCHAR(20) NOT NULL,
    CONSTRAINT pk_box PRIMARY KEY (entry, n)
);

CREATE TABLE card (
    entry BIGINT NOT NULL CONSTRAINT fk_card_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_card_cage REFERENCES cage (entry),
    revision INTEGER NOT NULL,
    face VARCHAR(4000) NOT NULL,
    digest VARCHAR(80) NOT NULL,
    CONSTRAINT pk_card PRIMARY KEY (entry, n)
);

CREATE TABLE visit (
    entry BIGINT NOT NULL CONSTRAINT fk_visit_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_visit_cage REFERENCES cage (entry),
    person VARCHAR(80) NOT NULL,
    answer VARCHAR(20) NOT NULL,
    how VARCHAR(20) NOT NULL,
    part VARCHAR(20),
    signs VARCHAR(1000),
    clock TIME,
    note VARCHAR(4000),
    CONSTRAINT pk_visit PRIMARY KEY (entry, n)
);
CREATE INDEX visit_newest ON visit (cage, day DESC, entry DESC, n DESC);
CREATE INDEX visit_day ON visit (day);
CREATE INDEX visit_answer ON visit (answer);

CREATE TABLE bird (
    entry BIGINT NOT NULL CONSTRAINT fk_bird_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    ring VARCHAR(80) NOT NULL,
    species VARCHAR(80),
    hatched VARCHAR(80),
    colour VARCHAR(80),
    home BIGINT CONSTRAINT fk_bird_home REFERENCES cage (entry),
    origin VARCHAR(80),
    CONSTRAINT pk_bird PRIMARY KEY (entry)
);
CREATE INDEX bird_ring ON bird (ring);

CREATE TABLE ring (
    entry BIGINT NOT NULL CONSTRAINT fk_ring_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_ring_bird REFERENCES bird (entry),
    ring VARCHAR(80) NOT NULL,
    CONSTRAINT pk_ring PRIMARY KEY (entry, n)
);

CREATE TABLE naming (
    entry BIGINT NOT NULL CONSTRAINT fk_naming_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_naming_bird REFERENCES bird (entry),
    name VARCHAR(80) NOT NULL,
    CONSTRAINT pk_naming PRIMARY KEY (entry, n)
);

CREATE TABLE sexing (
    entry BIGINT NOT NULL CONSTRAINT fk_sexing_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_sexing_bird REFERENCES bird (entry),
    sex VARCHAR(20) NOT NULL,
    CONSTRAINT pk_sexing PRIMARY KEY (entry, n)
);

CREATE TABLE parentage (
    entry BIGINT NOT NULL CONSTRAINT fk_parentage_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_parentage_bird REFERENCES bird (entry),
    father BIGINT CONSTRAINT fk_parentage_father REFERENCES bird (entry),
    mother BIGINT CONSTRAINT fk_parentage_mother REFERENCES bird (entry),
    CONSTRAINT pk_parentage PRIMARY KEY (entry, n)
);

CREATE TABLE trait (
    entry BIGINT NOT NULL CONSTRAINT fk_trait_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_trait_bird REFERENCES bird (entry),
    trait VARCHAR(80) NOT NULL,
    CONSTRAINT pk_trait PRIMARY KEY (entry, n)
);

CREATE TABLE move (
    entry BIGINT NOT NULL CONSTRAINT fk_move_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_move_bird REFERENCES bird (entry),
    cage BIGINT NOT NULL CONSTRAINT fk_move_cage REFERENCES cage (entry),
    CONSTRAINT pk_move PRIMARY KEY (entry, n)
);

CREATE TABLE finding (
    entry BIGINT NOT NULL CONSTRAINT fk_finding_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_finding_bird REFERENCES bird (entry),
    condition VARCHAR(20) NOT NULL,
    weight DECIMAL(6, 1),
    CONSTRAINT pk_finding PRIMARY KEY (entry, n)
);

CREATE TABLE treatment (
    entry BIGINT NOT NULL CONSTRAINT fk_treatment_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_treatment_bird REFERENCES bird (entry),
    product VARCHAR(80) NOT NULL,
    reason VARCHAR(80) NOT NULL,
    strength VARCHAR(80),
    batch VARCHAR(80),
    expiry DATE,
    CONSTRAINT pk_treatment PRIMARY KEY (entry, n)
);

CREATE TABLE outing (
    entry BIGINT NOT NULL CONSTRAINT fk_outing_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_outing_bird REFERENCES bird (entry),
    whither VARCHAR(20),
    CONSTRAINT pk_outing PRIMARY KEY (entry, n)
);

CREATE TABLE loose (
    entry BIGINT NOT NULL CONSTRAINT fk_loose_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_loose_bird REFERENCES bird (entry),
    loose BOOLEAN NOT NULL,
    CONSTRAINT pk_loose PRIMARY KEY (entry, n)
);

CREATE TABLE departure (
    entry BIGINT NOT NULL CONSTRAINT fk_departure_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    bird BIGINT NOT NULL CONSTRAINT fk_departure_bird REFERENCES bird (entry),
    way VARCHAR(20) NOT NULL,
    place VARCHAR(80),
    likely VARCHAR(4000),
    CONSTRAINT pk_departure PRIMARY KEY (entry, n),
    CONSTRAINT uq_departure_bird UNIQUE (bird)
);

CREATE TABLE plan (
    entry BIGINT NOT NULL CONSTRAINT fk_plan_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_plan_cage REFERENCES cage (entry),
    cock BIGINT NOT NULL CONSTRAINT fk_plan_cock REFERENCES bird (entry),
    hen BIGINT NOT NULL CONSTRAINT fk_plan_hen REFERENCES bird (entry),
    label VARCHAR(80),
    CONSTRAINT pk_plan PRIMARY KEY (entry, n)
);

CREATE TABLE pairing (
    entry BIGINT NOT NULL CONSTRAINT fk_pairing_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_pairing_cage REFERENCES cage (entry),
    cock BIGINT NOT NULL CONSTRAINT fk_pairing_cock REFERENCES bird (entry),
    hen BIGINT NOT NULL CONSTRAINT fk_pairing_hen REFERENCES bird (entry),
    label VARCHAR(80) NOT NULL,
    CONSTRAINT pk_pairing PRIMARY KEY (entry)
);

CREATE TABLE round (
    entry BIGINT NOT NULL CONSTRAINT fk_round_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_round_pair REFERENCES pairing (entry),
    number INTEGER NOT NULL,
    CONSTRAINT pk_round PRIMARY KEY (entry),
    CONSTRAINT uq_round_pair_number UNIQUE (pair, number)
);

CREATE TABLE round_end (
    entry BIGINT NOT NULL CONSTRAINT fk_round_end_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_round_end_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL CONSTRAINT fk_round_end_round REFERENCES round (entry),
    CONSTRAINT pk_round_end PRIMARY KEY (entry, n)
);

CREATE TABLE egg (
    entry BIGINT NOT NULL CONSTRAINT fk_egg_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    pair BIGINT NOT NULL CONSTRAINT fk_egg_pair REFERENCES pairing (entry),
    round BIGINT NOT NULL CONSTRAINT fk_egg_round REFERENCES round (entry),
    mark VARCHAR(80) NOT NULL,
    place VARCHAR(20) NOT NULL,
    cage BIGINT NOT NULL CONSTRAINT fk_egg_cage REFERENCES cage (entry),
    about BOOLEAN NOT NULL,
    CONSTRAINT pk_egg PRIMARY KEY (entry, n),
    CONSTRAINT uq_egg_round_mark UNIQUE (round, mark)
);

CREATE TABLE outcome (
    entry BIGINT NOT NULL CONSTRAINT fk_outcome_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    task VARCHAR(4000) NOT NULL,
    done BOOLEAN NOT NULL,
    why VARCHAR(4000),
    person VARCHAR(80) NOT NULL,
    clock TIME,
    CONSTRAINT pk_outcome PRIMARY KEY (entry, n)
);
CREATE INDEX outcome_day ON outcome (day);

CREATE TABLE absence (
    entry BIGINT NOT NULL CONSTRAINT fk_absence_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    CONSTRAINT pk_absence PRIMARY KEY (entry)
);

CREATE TABLE absence_plan (
    entry BIGINT NOT NULL CONSTRAINT fk_absence_plan_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    absence BIGINT NOT NULL CONSTRAINT fk_absence_plan_absence REFERENCES absence (entry),
    first_day DATE NOT NULL,
    last_day DATE NOT NULL,
    sitter VARCHAR(80) NOT NULL,
    keeper VARCHAR(80),
    vet VARCHAR(4000),
    CONSTRAINT pk_absence_plan PRIMARY KEY (entry, n)
);

CREATE TABLE leave_alone (
    entry BIGINT NOT NULL CONSTRAINT fk_leave_alone_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    absence BIGINT NOT NULL CONSTRAINT fk_leave_alone_absence REFERENCES absence (entry),
    cage BIGINT NOT NULL CONSTRAINT fk_leave_alone_cage REFERENCES cage (entry),
    CONSTRAINT pk_leave_alone PRIMARY KEY (entry, n)
);

CREATE TABLE absence_end (
    entry BIGINT NOT NULL CONSTRAINT fk_absence_end_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    absence BIGINT NOT NULL CONSTRAINT fk_absence_end_absence REFERENCES absence (entry),
    CONSTRAINT pk_absence_end PRIMARY KEY (entry, n),
    CONSTRAINT uq_absence_end_absence UNIQUE (absence)
);

CREATE TABLE seen (
    entry BIGINT NOT NULL CONSTRAINT fk_seen_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    seen BIGINT NOT NULL CONSTRAINT fk_seen_seen REFERENCES entry (number),
    CONSTRAINT pk_seen PRIMARY KEY (entry, n)
);

CREATE TABLE ring_stock (
    entry BIGINT NOT NULL CONSTRAINT fk_ring_stock_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    season INTEGER NOT NULL,
    size VARCHAR(80) NOT NULL,
    lowest INTEGER NOT NULL,
    highest INTEGER NOT NULL,
    CONSTRAINT pk_ring_stock PRIMARY KEY (entry, n)
);

CREATE TABLE ring_spoilt (
    entry BIGINT NOT NULL CONSTRAINT fk_ring_spoilt_entry REFERENCES entry (number),
    n SMALLINT NOT NULL,
    day DATE NOT NULL,
    ring VARCHAR(80) NOT NULL,
    CONSTRAINT pk_ring_spoilt PRIMARY KEY (entry, n),
    CONSTRAINT uq_ring_spoilt_ring UNIQUE (ring)
);
