-- Histories: many survey files at once, each of which then goes the way of a single upload. The bytes of every file stand in
-- raw_file before the request is answered, so that any node can work through them, and again after it was killed.

create table history_load (
  id          uuid primary key,
  -- of the archive or file as it was sent: the same history again is the same load
  sha256      bytea not null unique check (length(sha256) = 32),
  file_name   text not null,
  byte_count  bigint not null,
  received_at timestamptz not null,
  received_by text not null,
  -- when the first and the last file were worked through; rate and remaining time come of them
  started_at  timestamptz,
  finished_at timestamptz
);

create table history_file (
  load_id    uuid not null references history_load,
  ordinal    integer not null check (ordinal >= 1),
  file_name  text not null,
  sha256     bytea not null references raw_file,
  -- as the file itself writes it; files are worked through in this order, so that each survey is compared with those before
  taken      timestamp,
  state      text not null default 'WAITING'
             check (state in ('WAITING', 'ACCEPTED', 'HELD', 'REFUSED', 'IN_PARTS', 'FAILED')),
  upload_id  uuid references upload,
  -- the gravest remark
  said       text not null default '',
  primary key (load_id, ordinal),
  -- every outcome has its receipt but that of a file which the service itself could not work through
  check (upload_id is not null or state in ('WAITING', 'FAILED'))
);
create index history_file_waiting on history_file (load_id, taken, file_name, ordinal) where state = 'WAITING';
create index history_file_outcome on history_file (load_id, state, ordinal);
