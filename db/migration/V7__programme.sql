-- What must be done at each string, by which rules, what was done on visits, and when the next one is due.

-- When each string is to be visited next, and why. Recomputed whenever the string is assessed or changed in the register,
-- something of its programme changes, or a day has passed.
create table next_date (
  string_id       bigint primary key references battery_string,
  due_on          date not null,
  governs         text not null check (governs in ('INTERVAL', 'RECHECK', 'DUTY', 'RISK')),
  reason          text not null,
  interval_due_on date not null,
  -- what the assessment said, kept so that the date can be computed anew without it
  surveyed_on     date,
  recheck_by      date,
  risk_on         date,
  duty_due_on     date,
  check (due_on <= interval_due_on),
  check (due_on <= duty_due_on),
  check (due_on <= recheck_by),
  check (due_on <= risk_on)
);
create index next_date_due on next_date (due_on);

-- The owners' own rule packs, every version kept: a past day is judged by what was in force then. The built-in packs
-- are part of the program.
create table rule_pack (
  code          text not null check (code ~ '^[a-z0-9][a-z0-9-]{0,47}$'),
  version       integer not null check (version >= 1),
  in_force_from date not null,
  content       jsonb not null,
  made_at       timestamptz not null,
  made_by       text not null,
  primary key (code, version)
);
create trigger rule_pack_append_only before update or delete or truncate on rule_pack
  for each statement execute function refuse_change();

-- Which pack a string is under, from a day on until the next row's day. A string without a row has the owner's own
-- survey interval alone.
create table string_programme (
  string_id bigint not null references battery_string,
  from_on   date not null,
  pack      text not null,
  set_at    timestamptz not null,
  set_by    text not null,
  primary key (string_id, from_on)
);

-- How an either/or requirement is met at a string, from a day on.
create table programme_election (
  string_id   bigint not null references battery_string,
  requirement text not null,
  from_on     date not null,
  branch      text not null,
  set_at      timestamptz not null,
  set_by      text not null,
  primary key (string_id, requirement, from_on)
);

-- The owner's shorter interval at a string, from a day on; null months end it.
create table programme_own_interval (
  string_id   bigint not null references battery_string,
  requirement text not null,
  from_on     date not null,
  months      integer check (months >= 1),
  set_at      timestamptz not null,
  set_by      text not null,
  primary key (string_id, requirement, from_on)
);

-- A duty excused for a while, with the reason. It moves no due day.
create table duty_waiver (
  id          bigint generated always as identity primary key,
  string_id   bigint not null references battery_string,
  requirement text not null,
  granted_on  date not null,
  until_on    date not null check (until_on >= granted_on),
  reason      text not null check (reason <> ''),
  set_at      timestamptz not null,
  set_by      text not null
);
create index duty_waiver_string on duty_waiver (string_id);

-- A visit and what was looked at. Append-only: a wrong one is voided by a row of its own.
create table visit (
  id          bigint generated always as identity primary key,
  string_id   bigint not null references battery_string,
  visited_on  date not null,
  visited_by  text not null check (visited_by <> ''),
  note        text not null default '',
  recorded_at timestamptz not null,
  recorded_by text not null
);
create index visit_string on visit (string_id, visited_on);
create trigger visit_append_only before update or delete or truncate on visit
  for each statement execute function refuse_change();

create table visit_item (
  visit_id bigint not null references visit,
  item     text not null check (item ~ '^CHECK_'),
  -- FOUND: looked at, and something is wrong; the activity was done all the same
  outcome  text not null check (outcome in ('SOUND', 'FOUND')),
  -- in the item's unit
  value    double precision check (value < 'Infinity'),
  note     text not null default '',
  primary key (visit_id, item),
  check (outcome = 'SOUND' or note <> '')
);
create trigger visit_item_append_only before update or delete or truncate on visit_item
  for each statement execute function refuse_change();

create table visit_void (
  visit_id bigint primary key references visit,
  reason   text not null check (reason <> ''),
  at       timestamptz not null,
  by       text not null
);
create trigger visit_void_append_only before update or delete or truncate on visit_void
  for each statement execute function refuse_change();

create view standing_visit as
select v.* from visit v where not exists (select from visit_void x where x.visit_id = v.id);
