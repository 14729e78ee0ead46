-- A later weight of a whole carcase on our own scale: weighed again, or taken over because the pieces spoke for it. The newest
-- counts; the one written down at intake stays where it is. Nothing is typed where it was taken over.
create table carcase_weights (
  id uuid primary key,
  carcase_id uuid not null references carcases (id),
  weight_g bigint not null check (weight_g > 0),
  weight_typed varchar(40),
  scale_id varchar(60) not null,
  by_id uuid not null references people (id),
  weighed_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create index carcase_weights_by_carcase on carcase_weights (carcase_id, evidence_seq);

-- An answer without a reading is about the weight of the carcase as it stood before it.
alter table slip_answers alter column reading_id drop not null;
alter table slip_answers add column used_weight_id uuid references carcase_weights (id);
