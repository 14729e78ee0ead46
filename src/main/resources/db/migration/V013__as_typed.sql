-- The weight as it was typed: two figures changed round are looked for among the very figures somebody typed. Older readings have
-- none and count as typed with three places; so has a weight that was reckoned and taken over.
alter table readings add column weight_typed varchar(40);
