-- Quarters that somebody has put a name to.

-- What was signed is kept word for word, so that a later export can say what has changed since. A quarter may be signed
-- again after an amendment; every signature stays.
create table compliance_sign_off (
  id             bigint generated always as identity primary key,
  quarter        text not null check (quarter ~ '^\d{4}-Q[1-4]$'),
  -- null: the whole estate
  area_id        bigint references area,
  sha256         bytea not null check (length(sha256) = 32),
  -- the lines of the summary as CSV, compressed by gzip; sha256 is over the uncompressed bytes
  lines_gzip     bytea not null,
  line_count     integer not null check (line_count >= 0),
  note           text not null default '',
  signed_at      timestamptz not null,
  signed_by      text not null check (signed_by <> '')
);
create index compliance_sign_off_quarter on compliance_sign_off (quarter, area_id);
create trigger compliance_sign_off_append_only before update or delete or truncate on compliance_sign_off
  for each statement execute function refuse_change();
