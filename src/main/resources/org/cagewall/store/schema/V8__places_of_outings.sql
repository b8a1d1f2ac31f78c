-- Where a bird is out at: the name of a show, or with whom it is on loan.

ALTER TABLE outing ADD COLUMN place VARCHAR(80);
