-- What the owner said a line of food is: the dish, perishable, or anything else; NULL where it was never said.

ALTER TABLE feed ADD COLUMN kind VARCHAR(20);

-- Who feeds the cages that are left alone.

ALTER TABLE absence_plan ADD COLUMN feeder VARCHAR(80);
