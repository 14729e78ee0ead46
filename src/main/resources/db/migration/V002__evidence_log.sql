create table evidence (
  seq bigint primary key,
  recorded_at timestamp(3) with time zone not null,
  kind varchar(60) not null,
  text varchar(20000) not null,
  digest_before char(64) not null unique,
  digest char(64) not null unique
);

create table evidence_words (
  seq bigint not null references evidence (seq),
  field varchar(60) not null,
  salt char(32) not null,
  words varchar(4000) not null,
  primary key (seq, field)
);

create table answered (
  form_key varchar(36) primary key,
  fingerprint char(64) not null,
  location varchar(500) not null,
  answered_at timestamp(3) with time zone not null
);
