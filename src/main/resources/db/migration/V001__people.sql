create table people (
  id uuid primary key,
  name varchar(200) not null,
  name_key varchar(200) not null unique,
  added_at timestamp(3) with time zone not null
);

create table person_roles (
  person_id uuid not null references people (id),
  role varchar(20) not null check (role in ('assessor', 'apprentice', 'tutor', 'administrator')),
  primary key (person_id, role)
);

create table apprentice_groups (
  id uuid primary key,
  name varchar(200) not null unique
);

create table group_members (
  group_id uuid not null references apprentice_groups (id),
  person_id uuid not null references people (id),
  primary key (group_id, person_id)
);

create table passwords (
  id bigint generated always as identity primary key,
  person_id uuid not null references people (id),
  hash varchar(300) not null,
  set_at timestamp(3) with time zone not null
);

create table account_changes (
  id bigint generated always as identity primary key,
  person_id uuid not null references people (id),
  change_made varchar(20) not null check (change_made in ('disabled', 'enabled')),
  changed_at timestamp(3) with time zone not null
);

create table sessions (
  cookie_digest varchar(60) primary key,
  person_id uuid not null references people (id),
  role varchar(20) not null,
  opened_at timestamp(3) with time zone not null,
  seen_at timestamp(3) with time zone not null
);

create table one_time_links (
  token_digest varchar(60) primary key,
  person_id uuid references people (id),
  ends_at timestamp(3) with time zone not null
);

create table failed_sign_ins (
  name_key varchar(200) not null,
  failed_at timestamp(3) with time zone not null
);

create index failed_sign_ins_by_name on failed_sign_ins (name_key, failed_at);
