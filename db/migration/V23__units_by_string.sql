-- The units of an assessment in force are written and read a string at a time: so they lie in one row a string, an array a
-- column and an element a unit. Sixty rows of as many fields cost ten times as much to write and to take out again.
-- Whoever asks for single units asks the views, which are as the tables were.

create table assessed_jars (
  string_id            bigint primary key,
  position             integer[] not null,
  serial               text[] not null,
  sitting_since        date[] not null,
  urgency              text[] not null check (urgency <@ array['CLEAR', 'RECHECK', 'PLAN', 'ACT']),
  read_on              date[] not null,
  ohmic_kind           text[] not null check (array_remove(ohmic_kind, null) <@ array['IMPEDANCE', 'RESISTANCE', 'CONDUCTANCE']),
  ohmic                double precision[] not null,
  baseline_ohmic       double precision[] not null,
  baseline_from        text[] not null,
  baseline_taken_on    date[] not null,
  change_on_baseline   double precision[] not null,
  change_on_median     double precision[] not null,
  robust_z             double precision[] not null,
  trend_per_year       double precision[] not null,
  trend_low_per_year   double precision[] not null,
  trend_high_per_year  double precision[] not null,
  trend_readings       integer[] not null,
  volts                double precision[] not null,
  volts_per_cell       double precision[] not null,
  volts_off_median     double precision[] not null,
  celsius              double precision[] not null,
  reasons              jsonb[] not null,
  -- null while nothing is forecast
  chance_within_year   double precision[] not null check (0 <= all (chance_within_year) and 1 >= all (chance_within_year)),
  risk                 double precision[] not null check (0 <= all (risk) and 1 >= all (risk)),
  beyond_limit         double precision[] not null check (0 <= all (beyond_limit) and 1 >= all (beyond_limit)),
  crosses_early        date[] not null,
  crosses_middle       date[] not null,
  crosses_late         date[] not null,
  rise_over_new        double precision[] not null,
  rate_per_year        double precision[] not null,
  trouble              text[] not null
) with (toast_tuple_target = 8160);

create table assessed_links (
  string_id              bigint primary key,
  ordinal                integer[] not null,
  kind                   text[] not null,
  made_on                date[] not null,
  urgency                text[] not null check (urgency <@ array['CLEAR', 'RECHECK', 'PLAN', 'ACT']),
  read_on                date[] not null,
  combined_microohms     double precision[] not null,
  conductor_microohms    double precision[] not null,
  -- zero or less when the cable dominates
  net_microohms          double precision[] not null,
  baseline_microohms     double precision[] not null,
  baseline_taken_on      date[] not null,
  change_on_baseline     double precision[] not null,
  kind_average_microohms double precision[] not null,
  change_on_kind         double precision[] not null,
  trend_per_year         double precision[] not null,
  trend_low_per_year     double precision[] not null,
  trend_high_per_year    double precision[] not null,
  trend_readings         integer[] not null,
  drop_millivolts        double precision[] not null,
  heat_watts             double precision[] not null,
  reasons                jsonb[] not null,
  -- null while nothing is forecast; no dates are stored, because for links they cannot be trusted
  chance_within_year     double precision[] not null check (0 <= all (chance_within_year) and 1 >= all (chance_within_year)),
  risk                   double precision[] not null check (0 <= all (risk) and 1 >= all (risk)),
  beyond_limit           double precision[] not null check (0 <= all (beyond_limit) and 1 >= all (beyond_limit)),
  crosses_early          date[] not null,
  crosses_middle         date[] not null,
  crosses_late           date[] not null,
  rise_over_new          double precision[] not null,
  rate_per_year          double precision[] not null,
  trouble                text[] not null
) with (toast_tuple_target = 8160);

-- Floating-point numbers do not compress: trying costs more than it saves. Nobody searches inside the arrays: without
-- statistics of them, analyze stays cheap.
do $$
declare
  held record;
begin
  for held in
    select attrelid::regclass as relation, attname as name, atttypid = 'double precision[]'::regtype as is_real
    from pg_attribute
    where attrelid in ('assessed_jars'::regclass, 'assessed_links'::regclass) and attnum > 0 and attndims > 0
  loop
    execute format('alter table %s alter column %I set statistics 0', held.relation, held.name);
    if held.is_real then
      execute format('alter table %s alter column %I set storage external', held.relation, held.name);
    end if;
  end loop;
end
$$;

insert into assessed_jars (string_id,
  position, serial, sitting_since, urgency, read_on, ohmic_kind, ohmic, baseline_ohmic, baseline_from,
  baseline_taken_on, change_on_baseline, change_on_median, robust_z, trend_per_year, trend_low_per_year,
  trend_high_per_year, trend_readings, volts, volts_per_cell, volts_off_median, celsius, reasons, chance_within_year,
  risk, beyond_limit, crosses_early, crosses_middle, crosses_late, rise_over_new, rate_per_year, trouble)
select string_id,
  array_agg(position order by position), array_agg(serial order by position),
  array_agg(sitting_since order by position), array_agg(urgency order by position),
  array_agg(read_on order by position), array_agg(ohmic_kind order by position), array_agg(ohmic order by position),
  array_agg(baseline_ohmic order by position), array_agg(baseline_from order by position),
  array_agg(baseline_taken_on order by position), array_agg(change_on_baseline order by position),
  array_agg(change_on_median order by position), array_agg(robust_z order by position),
  array_agg(trend_per_year order by position), array_agg(trend_low_per_year order by position),
  array_agg(trend_high_per_year order by position), array_agg(trend_readings order by position),
  array_agg(volts order by position), array_agg(volts_per_cell order by position),
  array_agg(volts_off_median order by position), array_agg(celsius order by position),
  array_agg(reasons order by position), array_agg(chance_within_year order by position),
  array_agg(risk order by position), array_agg(beyond_limit order by position),
  array_agg(crosses_early order by position), array_agg(crosses_middle order by position),
  array_agg(crosses_late order by position), array_agg(rise_over_new order by position),
  array_agg(rate_per_year order by position), array_agg(trouble order by position)
from jar_assessment group by string_id;
drop table jar_assessment;
create view jar_assessment as
select a.string_id, u.*
from assessed_jars a,
  unnest(
    a.position, a.serial, a.sitting_since, a.urgency, a.read_on, a.ohmic_kind, a.ohmic, a.baseline_ohmic,
    a.baseline_from, a.baseline_taken_on, a.change_on_baseline, a.change_on_median, a.robust_z, a.trend_per_year,
    a.trend_low_per_year, a.trend_high_per_year, a.trend_readings, a.volts, a.volts_per_cell, a.volts_off_median,
    a.celsius, a.reasons, a.chance_within_year, a.risk, a.beyond_limit, a.crosses_early, a.crosses_middle,
    a.crosses_late, a.rise_over_new, a.rate_per_year, a.trouble
  ) as u(
    position, serial, sitting_since, urgency, read_on, ohmic_kind, ohmic, baseline_ohmic, baseline_from,
    baseline_taken_on, change_on_baseline, change_on_median, robust_z, trend_per_year, trend_low_per_year,
    trend_high_per_year, trend_readings, volts, volts_per_cell, volts_off_median, celsius, reasons,
    chance_within_year, risk, beyond_limit, crosses_early, crosses_middle, crosses_late, rise_over_new, rate_per_year,
    trouble);

insert into assessed_links (string_id,
  ordinal, kind, made_on, urgency, read_on, combined_microohms, conductor_microohms, net_microohms,
  baseline_microohms, baseline_taken_on, change_on_baseline, kind_average_microohms, change_on_kind, trend_per_year,
  trend_low_per_year, trend_high_per_year, trend_readings, drop_millivolts, heat_watts, reasons, chance_within_year,
  risk, beyond_limit, crosses_early, crosses_middle, crosses_late, rise_over_new, rate_per_year, trouble)
select string_id,
  array_agg(ordinal order by ordinal), array_agg(kind order by ordinal), array_agg(made_on order by ordinal),
  array_agg(urgency order by ordinal), array_agg(read_on order by ordinal),
  array_agg(combined_microohms order by ordinal), array_agg(conductor_microohms order by ordinal),
  array_agg(net_microohms order by ordinal), array_agg(baseline_microohms order by ordinal),
  array_agg(baseline_taken_on order by ordinal), array_agg(change_on_baseline order by ordinal),
  array_agg(kind_average_microohms order by ordinal), array_agg(change_on_kind order by ordinal),
  array_agg(trend_per_year order by ordinal), array_agg(trend_low_per_year order by ordinal),
  array_agg(trend_high_per_year order by ordinal), array_agg(trend_readings order by ordinal),
  array_agg(drop_millivolts order by ordinal), array_agg(heat_watts order by ordinal),
  array_agg(reasons order by ordinal), array_agg(chance_within_year order by ordinal),
  array_agg(risk order by ordinal), array_agg(beyond_limit order by ordinal),
  array_agg(crosses_early order by ordinal), array_agg(crosses_middle order by ordinal),
  array_agg(crosses_late order by ordinal), array_agg(rise_over_new order by ordinal),
  array_agg(rate_per_year order by ordinal), array_agg(trouble order by ordinal)
from link_assessment group by string_id;
drop table link_assessment;
create view link_assessment as
select a.string_id, u.*
from assessed_links a,
  unnest(
    a.ordinal, a.kind, a.made_on, a.urgency, a.read_on, a.combined_microohms, a.conductor_microohms, a.net_microohms,
    a.baseline_microohms, a.baseline_taken_on, a.change_on_baseline, a.kind_average_microohms, a.change_on_kind,
    a.trend_per_year, a.trend_low_per_year, a.trend_high_per_year, a.trend_readings, a.drop_millivolts, a.heat_watts,
    a.reasons, a.chance_within_year, a.risk, a.beyond_limit, a.crosses_early, a.crosses_middle, a.crosses_late,
    a.rise_over_new, a.rate_per_year, a.trouble
  ) as u(
    ordinal, kind, made_on, urgency, read_on, combined_microohms, conductor_microohms, net_microohms,
    baseline_microohms, baseline_taken_on, change_on_baseline, kind_average_microohms, change_on_kind, trend_per_year,
    trend_low_per_year, trend_high_per_year, trend_readings, drop_millivolts, heat_watts, reasons, chance_within_year,
    risk, beyond_limit, crosses_early, crosses_middle, crosses_late, rise_over_new, rate_per_year, trouble);
