create table sign_offs (
  id uuid primary key,
  apprentice_id uuid not null references people (id),
  step_id varchar(60) not null,
  turn integer not null check (turn >= 1),
  assessor_id uuid not null references people (id),
  signed_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq),
  unique (apprentice_id, step_id, turn),
  check (assessor_id <> apprentice_id)
);

create table withdrawals (
  id uuid primary key,
  sign_off_id uuid not null unique references sign_offs (id),
  by_id uuid not null references people (id),
  withdrawn_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create table exports (
  id uuid primary key,
  by_id uuid not null references people (id),
  covers varchar(20) not null check (covers in ('apprentice', 'group')),
  subject_id uuid not null,
  format varchar(10) not null check (format in ('csv', 'html', 'json')),
  row_count integer not null check (row_count >= 0),
  digest char(64) not null,
  taken_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create table export_files (
  export_id uuid primary key references exports (id),
  content text not null
);
