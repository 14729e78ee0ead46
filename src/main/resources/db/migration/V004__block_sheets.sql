create table block_sheets (
  id uuid primary key,
  carcase_id uuid not null references carcases (id),
  apprentice_id uuid not null references people (id),
  assessor_id uuid not null references people (id),
  breakdown_id varchar(60) not null,
  opened_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq),
  check (apprentice_id <> assessor_id)
);

create index block_sheets_by_carcase on block_sheets (carcase_id);
create index block_sheets_by_apprentice on block_sheets (apprentice_id);

create table sheet_steps (
  sheet_id uuid not null references block_sheets (id),
  place integer not null,
  step_id varchar(60) not null,
  side varchar(5) not null check (side in ('once', 'left', 'right')),
  primary key (sheet_id, step_id, side)
);

-- The sheet as its opening says it, steps and sides in one text, so that the log and the tables can be compared.
create view opened_sheets as
select s.id, s.carcase_id, s.apprentice_id, s.assessor_id, s.breakdown_id, s.evidence_seq,
  (select string_agg(p.step_id || '/' || p.side, ' ' order by p.place) from sheet_steps p where p.sheet_id = s.id) as scope
from block_sheets s;

-- The newest row of a step and side counts; without a mark it takes the one before back.
create table marks (
  id uuid primary key,
  sheet_id uuid not null,
  step_id varchar(60) not null,
  side varchar(5) not null,
  mark varchar(10) check (mark in ('unaided', 'prompted', 'not-yet', 'stopped')),
  fault_id varchar(60),
  observed_at timestamp(3) with time zone not null,
  recorded_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq),
  foreign key (sheet_id, step_id, side) references sheet_steps (sheet_id, step_id, side)
);

create index marks_by_sheet on marks (sheet_id, evidence_seq);

create table answers (
  id uuid primary key,
  sheet_id uuid not null references block_sheets (id),
  step_id varchar(60) not null,
  question_id varchar(60) not null,
  answered varchar(10) not null check (answered in ('right', 'partly', 'not-known')),
  evidence_seq bigint not null unique references evidence (seq)
);

create index answers_by_sheet on answers (sheet_id, evidence_seq);

-- What was typed towards closing and left for later; the words stand in the log.
create table closing_drafts (
  id uuid primary key,
  sheet_id uuid not null references block_sheets (id),
  next_day varchar(40),
  evidence_seq bigint not null unique references evidence (seq)
);

create table closings (
  sheet_id uuid primary key references block_sheets (id),
  closed_at timestamp(3) with time zone not null,
  next_day date not null,
  evidence_seq bigint not null unique references evidence (seq)
);
