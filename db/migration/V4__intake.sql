-- A file's way in. The raw bytes are kept for ever, also of what could not be read.

create table raw_file (
  sha256     bytea primary key check (length(sha256) = 32),
  byte_count bigint not null,
  content    bytea not null,
  stored_at  timestamptz not null
);
-- uploads are mostly compressed or small: skip the attempt to compress large ones out of line
alter table raw_file alter column content set storage external;
create trigger raw_file_append_only before update or delete or truncate on raw_file
  for each statement execute function refuse_change();

create table upload (
  -- named by the client, so that a repeated request is recognised
  id            uuid primary key,
  sha256        bytea not null references raw_file,
  file_name     text not null,
  received_at   timestamptz not null,
  received_by   text not null,
  -- the string the client said it belongs to, if it did
  claimed_string_id bigint references battery_string,
  state         text not null check (state in ('RECEIVED', 'ACCEPTED', 'HELD', 'REFUSED')),
  -- how far the file came: READ, MATCHED, CHECKED
  stage         text not null check (stage in ('RECEIVED', 'READ', 'MATCHED', 'CHECKED')),
  string_id     bigint references battery_string,
  survey_id     bigint,
  settled_at    timestamptz,
  settled_by    text,
  settled_reason text,
  check (num_nulls(settled_at, settled_by, settled_reason) in (0, 3)),
  check (state <> 'ACCEPTED' or (survey_id is not null and string_id is not null))
);
create index upload_sha256 on upload (sha256);
create index upload_state on upload (state, received_at desc);
create index upload_string on upload (string_id, received_at desc);

create table upload_remark (
  upload_id uuid not null references upload,
  ordinal   integer not null,
  code      text not null,
  severity  text not null check (severity in ('NOTE', 'DOUBT', 'HOLD', 'REFUSE')),
  line      integer not null default 0,
  "column"  integer not null default 0,
  place     text not null default '',
  seen      text not null default '',
  expected  text not null default '',
  message   text not null,
  remedy    text not null,
  primary key (upload_id, ordinal)
);
