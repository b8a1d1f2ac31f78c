-- Whether the day on which a box was put up, or a pair together, was the keeper's guess. What was told before says so in
-- its line: within a note the quotation marks would be escaped.

ALTER TABLE box ADD COLUMN about BOOLEAN NOT NULL DEFAULT FALSE;
ALTER TABLE pairing ADD COLUMN about BOOLEAN NOT NULL DEFAULT FALSE;
UPDATE box SET about = TRUE WHERE entry IN (SELECT number FROM entry WHERE line LIKE '%"about":true%');
UPDATE pairing SET about = TRUE WHERE entry IN (SELECT number FROM entry WHERE line LIKE '%"about":true%');
