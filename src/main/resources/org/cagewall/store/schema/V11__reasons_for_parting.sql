-- Reasons for parting a pair have plainer names.

UPDATE parting SET reason = 'HEN_WORN' WHERE reason = 'HEN_TIRED';
UPDATE parting SET reason = 'BROOD_LOST' WHERE reason = 'DISASTER';
UPDATE parting SET reason = 'CHICKS_POOR' WHERE reason = 'QUALITY';
