-- Discharge tests of whole strings. Append-only: a wrong one is voided by a row of its own, a corrected one is entered.
create table capacity_test (
  id                 bigint generated always as identity primary key,
  string_id          bigint not null references battery_string,
  tested_on          date not null,
  tested_by          text not null check (tested_by <> ''),
  kind               text not null check (kind in ('ACCEPTANCE', 'PERFORMANCE', 'MODIFIED_PERFORMANCE', 'SERVICE')),
  method             text not null check (method in ('RATE_ADJUSTED', 'LINEAR')),
  -- published current for the rated time at the reference temperature; the current that was drawn
  rated_amps         double precision not null check (rated_amps > 0 and rated_amps < 'Infinity'),
  rated_minutes      double precision not null check (rated_minutes > 0 and rated_minutes < 'Infinity'),
  discharge_amps     double precision not null check (discharge_amps > 0 and discharge_amps < 'Infinity'),
  actual_minutes     double precision not null check (actual_minutes > 0 and actual_minutes < 'Infinity'),
  -- of the electrolyte before the discharge
  celsius            double precision not null check (celsius between -40 and 80),
  reference_celsius  double precision not null check (reference_celsius between -40 and 80),
  -- only for the linear method
  linear_coefficient double precision check (linear_coefficient > 0 and linear_coefficient < 0.1),
  end_volts_per_cell double precision not null check (end_volts_per_cell > 0 and end_volts_per_cell < 3),
  string_end_volts   double precision check (string_end_volts > 0 and string_end_volts < 'Infinity'),
  -- of each position at the end of the test; a jar that was not read is a null element
  jar_end_volts      real[] check (not ('Infinity'::real <= any (jar_end_volts))),
  percent_capacity   double precision not null check (percent_capacity > 0 and percent_capacity < 'Infinity'),
  -- how it was computed, in words with numbers
  computation        text not null,
  note               text not null default '',
  recorded_at        timestamptz not null,
  recorded_by        text not null,
  check ((method = 'LINEAR') = (linear_coefficient is not null))
);
create index capacity_test_string on capacity_test (string_id, tested_on);
create trigger capacity_test_append_only before update or delete or truncate on capacity_test
  for each statement execute function refuse_change();

create table capacity_test_void (
  test_id bigint primary key references capacity_test,
  reason  text not null check (reason <> ''),
  at      timestamptz not null,
  by      text not null
);
create trigger capacity_test_void_append_only before update or delete or truncate on capacity_test_void
  for each statement execute function refuse_change();

create view standing_capacity_test as
select t.* from capacity_test t where not exists (select from capacity_test_void x where x.test_id = t.id);
