-- What reports need beside the lines themselves: prices, files in the making, subscriptions; and forms that were sent twice.

-- A checklist names its form, so that the same form sent twice, as after a broken connection, records one visit.
create table visit_form (
  id             uuid primary key,
  -- over what the form said, photographs included
  content_sha256 bytea not null check (octet_length(content_sha256) = 32),
  visit_ids      bigint[] not null check (cardinality(visit_ids) >= 1),
  recorded_at    timestamptz not null
);
create trigger visit_form_append_only before update or delete or truncate on visit_form
  for each statement execute function refuse_change();

-- The user's own prices: what one jar of a type costs to replace, from a day on until the next row's day.
-- Kept in the currency's own unit with two decimals; never converted.
create table jar_price (
  jar_type_id bigint not null references jar_type,
  valid_from  date not null,
  amount      numeric(12, 2) not null check (amount >= 0),
  currency    text not null check (currency ~ '^[A-Z]{3}$'),
  set_at      timestamptz not null,
  set_by      text not null,
  primary key (jar_type_id, valid_from)
);

-- A file that somebody asked for and that takes a while. The row is the job: whichever node claims it writes the file.
create table report_export (
  id          uuid primary key,
  asked_by    text not null,
  -- what is wanted, as its address says it: report, form, scope
  report      text not null,
  parameters  jsonb not null default '{}',
  form        text not null check (form in ('csv', 'xlsx', 'pdf', 'zip')),
  state       text not null check (state in ('ASKED', 'RUNNING', 'DONE', 'FAILED')),
  -- steps done of all; both grow while it runs
  done_steps  integer not null default 0 check (done_steps >= 0),
  all_steps   integer not null default 1 check (all_steps >= 1),
  step        text not null default '',
  asked_at    timestamptz not null,
  ended_at    timestamptz,
  file_name   text,
  content     bytea,
  sha256      bytea check (octet_length(sha256) = 32),
  problem     text,
  check ((state in ('DONE', 'FAILED')) = (ended_at is not null)),
  check ((state = 'DONE') = (num_nonnulls(file_name, content, sha256) = 3)),
  check ((state = 'FAILED') = (problem is not null))
);
alter table report_export alter column content set storage external;
create index report_export_asked on report_export (asked_by, asked_at desc);

-- Who gets which report by e-mail, and the last period it went out for, so that no period brings two.
create table report_subscription (
  id        bigint generated always as identity primary key,
  user_id   bigint not null references app_user,
  email     text not null check (email ~ '^[^@\s]+@[^@\s]+$'),
  report    text not null,
  form      text not null check (form in ('csv', 'xlsx', 'pdf')),
  -- null: everything in the person's reach on the day it is sent
  area_id   bigint references area,
  rhythm    text not null check (rhythm in ('WEEKLY', 'MONTHLY', 'QUARTERLY')),
  made_at   timestamptz not null,
  -- first day of the period it last went out in
  sent_for  date,
  unique nulls not distinct (user_id, report, form, area_id, rhythm)
);
