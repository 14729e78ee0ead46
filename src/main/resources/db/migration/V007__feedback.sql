create table replies (
  id uuid primary key,
  sheet_id uuid not null references closings (sheet_id),
  apprentice_id uuid not null references people (id),
  agrees varchar(6) not null check (agrees in ('yes', 'partly', 'no')),
  replied_at timestamp(3) with time zone not null,
  evidence_seq bigint not null unique references evidence (seq)
);

create index replies_by_sheet on replies (sheet_id, evidence_seq);
create index replies_by_apprentice on replies (apprentice_id);
