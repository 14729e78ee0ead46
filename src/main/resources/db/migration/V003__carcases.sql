create table carcases (
  id uuid primary key,
  number integer not null unique check (number > 0),
  breakdown_id varchar(60) not null,
  killed_on date not null,
  ticket_weight_g bigint not null check (ticket_weight_g > 0),
  ticket_weighed varchar(10) not null check (ticket_weighed in ('hot', 'cold')),
  own_weight_g bigint not null check (own_weight_g > 0),
  own_weighed varchar(10) not null check (own_weighed in ('hot', 'cold')),
  scale_id varchar(60) not null,
  kidneys varchar(10) not null check (kidneys in ('in', 'out')),
  fat_class varchar(10),
  mark_legible varchar(10) not null check (mark_legible in ('yes', 'no')),
  age varchar(20) not null check (age in ('under-12-months', 'over-12-months', 'unknown')),
  cord varchar(20) not null check (cord in ('out', 'in', 'unknown')),
  meat_tenths_c integer not null,
  kidney_tenths_c integer,
  recorded_by_id uuid not null references people (id),
  recorded_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create table carcase_decisions (
  id uuid primary key,
  carcase_id uuid not null references carcases (id),
  decision varchar(10) not null check (decision in ('accept', 'hold', 'refuse')),
  by_id uuid not null references people (id),
  decided_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create index carcase_decisions_by_carcase on carcase_decisions (carcase_id, evidence_seq);

create table carcase_counts (
  id uuid primary key,
  carcase_id uuid not null references carcases (id),
  thoracic integer check (thoracic > 0),
  lumbar integer check (lumbar > 0),
  by_id uuid not null references people (id),
  counted_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq),
  check (thoracic is not null or lumbar is not null)
);

create index carcase_counts_by_carcase on carcase_counts (carcase_id, evidence_seq);
