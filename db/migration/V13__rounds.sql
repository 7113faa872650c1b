-- What the crews carry along: waivers that end early, photographs of visits, planned rounds, calendars and digests.

-- A waiver that ended before its day: from ended_on on it excuses nothing; before that day it did.
alter table duty_waiver
  add column ended_on date check (ended_on >= granted_on),
  add column ended_at timestamptz,
  add column ended_by text,
  add check (num_nonnulls(ended_on, ended_at, ended_by) in (0, 3));

-- Photographs taken on a visit, kept as they came. The media type is what the bytes are, not what the sender said.
create table visit_photo (
  id          bigint generated always as identity primary key,
  visit_id    bigint not null references visit,
  file_name   text not null,
  media_type  text not null check (media_type in ('image/jpeg', 'image/png', 'image/webp')),
  sha256      bytea not null check (octet_length(sha256) = 32),
  bytes       bytea not null check (octet_length(bytes) between 1 and 10485760),
  recorded_at timestamptz not null,
  recorded_by text not null,
  -- the same photograph sent twice, as after a broken connection, is one
  unique (visit_id, sha256)
);
create trigger visit_photo_append_only before update or delete or truncate on visit_photo
  for each statement execute function refuse_change();

-- A planned visit to a site and the duties it is meant to meet. Whether they were met is never stored here: surveys,
-- visits and capacity tests say so.
create table round (
  id           bigint generated always as identity primary key,
  site_id      bigint not null references site,
  planned_on   date not null,
  crew         text not null default '',
  note         text not null default '',
  -- counts the changes, for calendars that hold an older state
  sequence     integer not null default 0,
  made_at      timestamptz not null,
  made_by      text not null,
  changed_at   timestamptz not null,
  cancelled_at timestamptz,
  cancelled_because text check (cancelled_because <> ''),
  check ((cancelled_at is null) = (cancelled_because is null))
);
create index round_day on round (planned_on);
create index round_site on round (site_id, planned_on);

create table round_duty (
  round_id    bigint not null references round,
  string_id   bigint not null references battery_string,
  -- the code of a requirement, or 'survey' for what interval, recheck or risk ask for
  requirement text not null,
  -- the last day in time as it was when the round was planned
  due_on      date not null,
  primary key (round_id, string_id, requirement)
);
create index round_duty_string on round_duty (string_id);

-- How often a string's next date moved, for calendars that hold an older one.
alter table next_date
  add column sequence integer not null default 0,
  add column moved_at timestamptz;

-- The secret address of a person's calendar; only its hash is kept. A new one takes the place of the old.
create table calendar_feed (
  user_id       bigint primary key references app_user,
  secret_sha256 bytea not null unique check (octet_length(secret_sha256) = 32),
  made_at       timestamptz not null
);

-- Who asked for the digest by e-mail, and the last day it went out, so that no day brings two.
create table digest_wish (
  user_id  bigint primary key references app_user,
  email    text not null check (email ~ '^[^@\s]+@[^@\s]+$'),
  wished_at timestamptz not null,
  sent_on  date
);
