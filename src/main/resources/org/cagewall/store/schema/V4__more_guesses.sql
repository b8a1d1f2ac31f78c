-- Whether the day on which a hen was seen to sit, or a chick was ringed, left the box or was weaned, was the keeper's guess.

ALTER TABLE sitting ADD COLUMN about BOOLEAN NOT NULL DEFAULT FALSE;
ALTER TABLE ringing ADD COLUMN about BOOLEAN NOT NULL DEFAULT FALSE;
ALTER TABLE box_trip ADD COLUMN about BOOLEAN NOT NULL DEFAULT FALSE;
ALTER TABLE weaning ADD COLUMN about BOOLEAN NOT NULL DEFAULT FALSE;
UPDATE sitting SET about = TRUE WHERE entry IN (SELECT number FROM entry WHERE line LIKE '%"about":true%');
UPDATE ringing SET about = TRUE WHERE entry IN (SELECT number FROM entry WHERE line LIKE '%"about":true%');
UPDATE box_trip SET about = TRUE WHERE entry IN (SELECT number FROM entry WHERE line LIKE '%"about":true%');
UPDATE weaning SET about = TRUE WHERE entry IN (SELECT number FROM entry WHERE line LIKE '%"about":true%');
