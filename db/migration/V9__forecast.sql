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
