-- Repairs of held surveys. The raw file is never altered: the steps are replayed over its reading, in their order, each
-- time the survey is looked at, and once more when it is stored.

create table upload_repair (
  upload_id  uuid not null references upload,
  ordinal    integer not null check (ordinal >= 1),
  -- which of the steps, and its arguments by name
  kind       text not null,
  arguments  jsonb not null,
  -- as the person who did it was told of it: the record stays readable when wordings change
  words      text not null check (words <> ''),
  reason     text not null default '',
  -- undo is a row of its own, so that what was tried stays on record
  takes_back integer,
  at         timestamptz not null,
  by         text not null,
  primary key (upload_id, ordinal),
  foreign key (upload_id, takes_back) references upload_repair (upload_id, ordinal),
  constraint a_step_is_taken_back_once unique (upload_id, takes_back),
  check ((kind = 'TAKEN_BACK') = (takes_back is not null)),
  check (takes_back < ordinal)
);
create trigger upload_repair_append_only before update or delete or truncate on upload_repair
  for each statement execute function refuse_change();

-- A file of several surveys: one upload, and a part of it for each survey, with an outcome of its own.
alter table upload
  add column part_of uuid references upload,
  add column part integer check (part >= 1),
  drop constraint upload_state_check,
  add constraint upload_state_check check (state in ('RECEIVED', 'ACCEPTED', 'HELD', 'REFUSED', 'IN_PARTS')),
  add constraint a_part_has_a_number check ((part_of is null) = (part is null)),
  add constraint a_part_has_no_parts check (part_of is null or state <> 'IN_PARTS'),
  add constraint a_part_comes_once unique (part_of, part);
