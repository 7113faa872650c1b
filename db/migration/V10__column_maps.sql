-- How tables of other shapes become surveys. A saved map is never changed: saving it again makes its next version, so that
-- it can be told later by which version a survey was read.

create table column_map (
  name       text not null check (name <> '' and length(name) <= 80),
  version    integer not null check (version >= 1),
  -- null for every area; otherwise only files handed in by people who reach that area are tried against it
  area_id    bigint references area,
  -- the crew or instrument it belongs to, in words
  belongs_to text not null default '',
  definition jsonb not null,
  -- a retired map is not tried any more; saving it again brings it back
  retired    boolean not null default false,
  saved_at   timestamptz not null,
  saved_by   text not null,
  primary key (name, version)
);
create trigger column_map_append_only before update or delete or truncate on column_map
  for each statement execute function refuse_change();
