-- What the surveys of the whole estate tell of each instrument. Made again by every walk over the estate; never applied to
-- readings.
create table instrument_record (
  serial           text primary key,
  surveys          integer not null check (surveys >= 1),
  -- where it was used: who sees none of these areas does not see the instrument
  area_ids         bigint[] not null,
  -- which strings it read, so that its surveys are found without searching all
  string_ids       bigint[] not null,
  first_on         date not null,
  last_on          date not null,
  calibration_due  date,
  -- relative, 0.03 is 3 % high, with its 95 % interval; null while nothing can be told
  reads_off        double precision,
  reads_off_low    double precision,
  reads_off_high   double precision,
  since            date,
  -- the surveys that tell so
  evidence         bigint[] not null default '{}',
  evidence_days    integer not null default 0,
  looked_at        timestamptz not null,
  check (num_nulls(reads_off, reads_off_low, reads_off_high, since) in (0, 4)),
  check (reads_off between reads_off_low and reads_off_high),
  check (first_on <= last_on)
);

-- What the estate's own jars taught of a jar type: one row each time somebody applied it, the latest in force. Appended,
-- never changed, so that every judgement can be told which version it knew.
create table jar_type_learned (
  id                bigint generated always as identity primary key,
  jar_type_id       bigint not null references jar_type,
  version           integer not null check (version >= 1),
  applied_at        timestamptz not null,
  applied_by        text not null,
  -- reference level when settled, in the unit of the kind, with the 95 % interval of its middle
  ohmic_kind        text check (ohmic_kind in ('IMPEDANCE', 'RESISTANCE', 'CONDUCTANCE')),
  reference_ohmic   double precision check (reference_ohmic > 0),
  reference_low     double precision,
  reference_high    double precision,
  -- robust standard deviation between jars, relative
  spread            double precision check (spread >= 0),
  reference_jars    integer not null default 0,
  reference_strings integer not null default 0,
  -- rise at which half of the jars had lost their capacity, logarithmic, and how the jars differ in it
  log_limit         double precision check (log_limit > 0),
  log_limit_low     double precision,
  log_limit_high    double precision,
  log_limit_spread  double precision check (log_limit_spread > 0),
  tested            integer not null default 0,
  failed            integer not null default 0 check (failed between 0 and tested),
  -- a row without values takes back what was applied before
  taken_back        boolean not null default false,
  unique (jar_type_id, version),
  check (num_nulls(ohmic_kind, reference_ohmic, reference_low, reference_high, spread) in (0, 5)),
  check (num_nulls(log_limit, log_limit_low, log_limit_high, log_limit_spread) in (0, 4)),
  check (taken_back = (reference_ohmic is null and log_limit is null))
);
create trigger jar_type_learned_append_only before update or delete or truncate on jar_type_learned
  for each statement execute function refuse_change();
