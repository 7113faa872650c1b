-- The judgement of each string as of its last survey, stored with what it was computed from.

-- Append-only history: a row is added only when engine or inputs changed.
create table string_assessment (
  id                bigint generated always as identity primary key,
  string_id         bigint not null references battery_string,
  survey_id         bigint,
  as_of             date not null,
  engine_version    text not null,
  input_fingerprint bytea not null check (length(input_fingerprint) = 32),
  assessed_at       timestamptz not null,
  urgency           text not null check (urgency in ('CLEAR', 'RECHECK', 'PLAN', 'ACT')),
  headline          text not null,
  -- figures of the string and reasons in words: {"reasons": [...], "figures": {...}, "doubts": [...]}
  detail            jsonb not null,
  recheck_by        date,
  unique (string_id, engine_version, input_fingerprint)
);
create index string_assessment_latest on string_assessment (string_id, id desc);
create trigger string_assessment_append_only before update or delete or truncate on string_assessment
  for each statement execute function refuse_change();

-- Which of them is in force; the narrow tables below always belong to it.
create table current_assessment (
  string_id     bigint primary key references battery_string,
  assessment_id bigint not null references string_assessment
);

create table jar_assessment (
  string_id            bigint not null,
  position             integer not null,
  urgency              text not null check (urgency in ('CLEAR', 'RECHECK', 'PLAN', 'ACT')),
  ohmic                real,
  baseline_ohmic       real,
  baseline_from        text,
  change_on_baseline   real,
  change_on_median     real,
  robust_z             real,
  trend_per_year       real,
  trend_low_per_year   real,
  trend_high_per_year  real,
  volts                real,
  celsius              real,
  reasons              jsonb not null default '[]',
  primary key (string_id, position)
);
create index jar_assessment_urgent on jar_assessment (urgency) where urgency <> 'CLEAR';

create table link_assessment (
  string_id           bigint not null,
  ordinal             integer not null,
  urgency             text not null check (urgency in ('CLEAR', 'RECHECK', 'PLAN', 'ACT')),
  combined_microohms  real,
  conductor_microohms real,
  net_microohms       real,
  baseline_microohms  real,
  change_on_baseline  real,
  change_on_kind      real,
  drop_millivolts     real,
  heat_watts          real,
  reasons             jsonb not null default '[]',
  primary key (string_id, ordinal)
);
create index link_assessment_urgent on link_assessment (urgency) where urgency <> 'CLEAR';

-- When each string is to be visited next, and why.
create table next_date (
  string_id  bigint primary key references battery_string,
  due_on     date not null,
  governs    text not null,
  reason     text not null,
  interval_due_on date not null,
  recheck_by date
);
create index next_date_due on next_date (due_on);
