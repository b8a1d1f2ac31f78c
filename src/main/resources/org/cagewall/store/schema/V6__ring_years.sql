-- The year that a bird's ring bears, where it was said; NULL where it was not.

ALTER TABLE bird ADD COLUMN ring_year INTEGER;
ALTER TABLE ring ADD COLUMN ring_year INTEGER;
