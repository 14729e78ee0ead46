create table readings (
  id uuid primary key,
  carcase_id uuid not null references carcases (id),
  cut_id varchar(60) not null,
  row_id varchar(60),
  side varchar(5) not null check (side in ('once', 'left', 'right')),
  weight_g bigint not null check (weight_g > 0),
  tare_g bigint check (tare_g > 0 and tare_g < weight_g),
  scale_id varchar(60) not null,
  moment varchar(10) not null check (moment in ('expected', 'later')),
  part_of varchar(60),
  sheet_id uuid references block_sheets (id),
  by_id uuid not null references people (id),
  observed_at timestamp(3) with time zone not null,
  recorded_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create index readings_by_carcase on readings (carcase_id, evidence_seq);
create index readings_by_sheet on readings (sheet_id);

-- A reading taken off the list; why it was stands in the words of the log.
create table reading_strikes (
  reading_id uuid primary key references readings (id),
  by_id uuid not null references people (id),
  struck_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

-- The newest row of a sheet, measure and side counts; without a value it takes the one before back.
create table trim_readings (
  id uuid primary key,
  sheet_id uuid not null references block_sheets (id),
  measure_id varchar(60) not null,
  side varchar(5) not null check (side in ('once', 'left', 'right')),
  value_typed varchar(20),
  by_id uuid not null references people (id),
  measured_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create index trim_readings_by_sheet on trim_readings (sheet_id, evidence_seq);
