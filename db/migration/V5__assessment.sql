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

-- The units of the assessment in force; replaced as a whole with it. Shares: 0.41 is 41 % up.
create table jar_assessment (
  string_id            bigint not null,
  position             integer not null,
  serial               text,
  sitting_since        date not null,
  urgency              text not null check (urgency in ('CLEAR', 'RECHECK', 'PLAN', 'ACT')),
  read_on              date,
  ohmic_kind           text check (ohmic_kind in ('IMPEDANCE', 'RESISTANCE', 'CONDUCTANCE')),
  ohmic                double precision,
  baseline_ohmic       double precision,
  baseline_from        text,
  baseline_taken_on    date,
  change_on_baseline   double precision,
  change_on_median     double precision,
  robust_z             double precision,
  trend_per_year       double precision,
  trend_low_per_year   double precision,
  trend_high_per_year  double precision,
  trend_readings       integer,
  volts                double precision,
  volts_per_cell       double precision,
  volts_off_median     double precision,
  celsius              double precision,
  reasons              jsonb not null default '[]',
  primary key (string_id, position)
);
create index jar_assessment_urgent on jar_assessment (urgency) where urgency <> 'CLEAR';

create table link_assessment (
  string_id             bigint not null,
  ordinal               integer not null,
  kind                  text not null,
  made_on               date not null,
  urgency               text not null check (urgency in ('CLEAR', 'RECHECK', 'PLAN', 'ACT')),
  read_on               date,
  combined_microohms    double precision,
  conductor_microohms   double precision,
  -- zero or less when the cable dominates
  net_microohms         double precision,
  baseline_microohms    double precision,
  baseline_taken_on     date,
  change_on_baseline    double precision,
  kind_average_microohms double precision,
  change_on_kind        double precision,
  trend_per_year        double precision,
  trend_low_per_year    double precision,
  trend_high_per_year   double precision,
  trend_readings        integer,
  drop_millivolts       double precision,
  heat_watts            double precision,
  reasons               jsonb not null default '[]',
  primary key (string_id, ordinal)
);
create index link_assessment_urgent on link_assessment (urgency) where urgency <> 'CLEAR';

-- A walk over the whole estate; only strings with news get a new assessment. Its progress can be watched.
create table assessment_run (
  id             bigint generated always as identity primary key,
  requested_at   timestamptz not null,
  requested_by   text not null,
  started_at     timestamptz,
  finished_at    timestamptz,
  strings_total  integer not null default 0,
  strings_seen   integer not null default 0,
  strings_judged integer not null default 0
);
-- at most one at a time: whoever asks meanwhile is shown the one under way
create unique index assessment_run_under_way on assessment_run ((true)) where finished_at is null;
