-- What somebody added in their own words to the reason for which a task was not done.

ALTER TABLE outcome ADD COLUMN note VARCHAR(4000);
