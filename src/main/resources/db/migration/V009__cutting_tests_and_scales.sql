-- A check weight put on a scale, and whether the scale kept what its class permits in use.
create table scale_checks (
  id uuid primary key,
  scale_id varchar(60) not null,
  nominal_g bigint not null check (nominal_g > 0),
  reading_g bigint not null check (reading_g >= 0),
  verdict varchar(10) not null check (verdict in ('within', 'outside', 'beyond')),
  by_id uuid not null references people (id),
  checked_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create index scale_checks_by_scale on scale_checks (scale_id, evidence_seq);

-- The newest row of a carcase says whether its weigh-up counts as a cutting test, and what each cut came to in percent of the cold
-- carcase; who cut it, or why it counts no more, stands in the words of the log.
create table cutting_tests (
  id uuid primary key,
  carcase_id uuid not null references carcases (id),
  counts varchar(3) not null check (counts in ('yes', 'no')),
  percents varchar(2000) not null,
  fat_class varchar(3),
  kidneys varchar(3) not null check (kidneys in ('in', 'out')),
  cold_g bigint not null check (cold_g > 0),
  by_id uuid not null references people (id),
  told_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create index cutting_tests_by_carcase on cutting_tests (carcase_id, evidence_seq);

-- A score kept as it was given, with the version of the tables it was given under; a later one stands beside it.
create table kept_scores (
  id uuid primary key,
  carcase_id uuid not null references carcases (id),
  tables varchar(400) not null,
  table_version varchar(64) not null,
  balance varchar(20) not null,
  yield_hundredths bigint,
  cuts varchar(4000) not null,
  by_id uuid not null references people (id),
  scored_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create index kept_scores_by_carcase on kept_scores (carcase_id, evidence_seq);
