create table study_answers (
  seq bigint generated always as identity primary key,
  id uuid not null unique,
  apprentice_id uuid not null references people (id),
  card_id varchar(160) not null,
  seed bigint not null,
  item_digest varchar(64) not null,
  chosen integer,
  answered_right varchar(3) not null check (answered_right in ('yes', 'no')),
  grade integer not null check (grade between 0 and 5),
  answered_at timestamp(3) with time zone not null
);

create index study_answers_by_apprentice on study_answers (apprentice_id, seq);
