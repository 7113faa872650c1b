-- What the forecast says of each jar and link, how far it has followed each string, and what people overruled.

-- Null while nothing is forecast. For links no dates are stored: they cannot be trusted.
alter table jar_assessment
  add column chance_within_year double precision check (chance_within_year between 0 and 1),
  add column risk               double precision check (risk between 0 and 1),
  add column beyond_limit       double precision check (beyond_limit between 0 and 1),
  add column crosses_early      date,
  add column crosses_middle     date,
  add column crosses_late       date,
  add column rise_over_new      double precision,
  add column rate_per_year      double precision,
  add column trouble            text;
alter table link_assessment
  add column chance_within_year double precision check (chance_within_year between 0 and 1),
  add column risk               double precision check (risk between 0 and 1),
  add column beyond_limit       double precision check (beyond_limit between 0 and 1),
  add column crosses_early      date,
  add column crosses_middle     date,
  add column crosses_late       date,
  add column rise_over_new      double precision,
  add column rate_per_year      double precision,
  add column trouble            text;

-- Saves following a string from its first survey each time. Holds nothing that cannot be made again: a row whose
-- fingerprint no longer fits the surveys is set aside and written anew.
create table forecast_state (
  string_id        bigint primary key references battery_string,
  surveys          integer not null check (surveys >= 0),
  seen_fingerprint bytea not null check (length(seen_fingerprint) = 32),
  state            bytea not null,
  -- per survey with an instrument on record: how far its jars' centre lay from what was expected, logarithmic
  survey_ids       bigint[] not null,
  innovations      double precision[] not null,
  variances        double precision[] not null,
  check (cardinality(survey_ids) = cardinality(innovations) and cardinality(survey_ids) = cardinality(variances))
);
-- floating-point numbers do not compress: trying costs more than it saves
alter table forecast_state alter column state set storage external;

-- A person's urgency in place of the engine's, with reason and last day. It ends by itself after that day, when someone
-- ends it or sets another, and with the jar or joint it was meant for. Rows are kept: only the ending is written later.
create table overrule (
  id         bigint generated always as identity primary key,
  string_id  bigint not null references battery_string,
  kind       text not null check (kind in ('STRING', 'JAR', 'LINK')),
  -- position of a jar, ordinal of a link
  unit       integer,
  -- since when that jar sits there or that joint is as it is
  unit_since date,
  urgency    text not null check (urgency in ('CLEAR', 'RECHECK', 'PLAN', 'ACT')),
  -- what the engine said that day
  instead_of text not null check (instead_of in ('CLEAR', 'RECHECK', 'PLAN', 'ACT')),
  reason     text not null check (length(btrim(reason)) between 1 and 2000),
  made_at    timestamptz not null,
  made_by    text not null,
  last_day   date not null,
  ended_at   timestamptz,
  ended_by   text,
  check ((kind = 'STRING') = (unit is null)),
  check ((unit is null) = (unit_since is null)),
  check ((ended_at is null) = (ended_by is null)),
  check (urgency <> instead_of)
);
create unique index overrule_standing on overrule (string_id, kind, coalesce(unit, -1)) where ended_at is null;
