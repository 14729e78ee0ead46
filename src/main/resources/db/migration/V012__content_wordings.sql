-- How every step was worded under one version of the content, kept when the first mark is given under it. The digest is that of
-- the words and stands with each mark in the log, so that nobody can change what a mark was judged by.
create table content_wordings (
  digest char(64) primary key,
  version char(64) not null,
  words text not null,
  kept_at timestamp(3) with time zone not null
);

alter table marks add column wording char(64) references content_wordings (digest);
