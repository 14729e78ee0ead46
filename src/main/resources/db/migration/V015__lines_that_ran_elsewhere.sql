-- Where a line really ran, as the keeper of the sheet records it at the step that cuts it. The newest row of a step counts; one
-- without a line takes back what was recorded before.
create table ran_lines (
  id uuid primary key,
  sheet_id uuid not null references block_sheets (id),
  step_id varchar(60) not null,
  line_id varchar(60),
  towards varchar(60),
  places integer check (places between 1 and 9),
  side varchar(5) check (side in ('both', 'left', 'right')),
  evidence_seq bigint not null unique references evidence (seq),
  check (line_id is null and towards is null and places is null and side is null
    or line_id is not null and towards is not null and places is not null and side is not null)
);

create index ran_lines_by_sheet on ran_lines (sheet_id, evidence_seq);
