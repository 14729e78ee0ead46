-- How somebody answered the question whether a reading is right; an exchange is about two readings. What was used instead is a
-- reading of its own; why a reading was kept stands in the words of the log.
create table slip_answers (
  id uuid primary key,
  carcase_id uuid not null references carcases (id),
  reading_id uuid not null references readings (id),
  other_id uuid references readings (id),
  because varchar(30) not null,
  chance_in_1000 integer not null check (chance_in_1000 between 0 and 1000),
  likely_g bigint,
  answer varchar(5) not null check (answer in ('use', 'again', 'keep')),
  used_id uuid references readings (id),
  other_used_id uuid references readings (id),
  by_id uuid not null references people (id),
  answered_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create index slip_answers_by_carcase on slip_answers (carcase_id, evidence_seq);
