-- Accepted surveys. Append-only: a survey is never changed and never deleted, only withdrawn by a row of its own.
--
-- One row a survey with real[] columns: about 16 bytes a reading instead of 80, and the readings of a string's whole
-- history come back in one short range scan. Index 1 of an array is position 1 (SQL arrays count from 1).
-- A value that was not measured is a NULL element; NaN is never stored, because it would poison every aggregate.
-- PostgreSQL orders NaN above infinity, so "infinity <= any (...)" finds both.

create sequence survey_id;

create table survey (
  -- the key leads with the string and the time, so that the table can be partitioned by either
  string_id           bigint not null references battery_string,
  taken_at            timestamptz not null,
  id                  bigint not null default nextval('survey_id'),
  -- the site's own calendar date
  taken_on            date not null,
  recorded_at         timestamptz not null,
  recorded_by         text not null,
  upload_id           uuid,
  raw_sha256          bytea check (length(raw_sha256) = 32),
  taken_by            text not null default '',
  instrument          text,
  instrument_calibration_due date,
  ohmic_kind          text not null check (ohmic_kind in ('IMPEDANCE', 'RESISTANCE', 'CONDUCTANCE')),
  ohmic_hertz         real check (ohmic_hertz < 'Infinity'),
  ambient_celsius     real check (ambient_celsius < 'Infinity'),
  string_volts        real check (string_volts < 'Infinity'),
  float_amps          real check (float_amps < 'Infinity'),
  ripple_amps         real check (ripple_amps < 'Infinity'),
  ripple_volts        real check (ripple_volts < 'Infinity'),
  injected_amps       real check (injected_amps < 'Infinity'),
  clamped_amps        real check (clamped_amps < 'Infinity'),
  on_float            boolean not null default true,
  note                text not null default '',
  -- null instead of an array in which nothing was measured
  ohmic               real[] not null check (cardinality(ohmic) >= 1),
  volts               real[],
  celsius             real[],
  gravity             real[],
  -- straps of link 0, then of link 1, ... N; each link takes straps_per_link elements
  straps_per_link     smallint not null default 1 check (straps_per_link between 1 and 8),
  link_microohms      real[],
  primary key (string_id, taken_at, id),
  check (cardinality(volts) = cardinality(ohmic)),
  check (cardinality(celsius) = cardinality(ohmic)),
  check (cardinality(gravity) = cardinality(ohmic)),
  check (cardinality(link_microohms) = (cardinality(ohmic) + 1) * straps_per_link),
  constraint only_measured_ohmic check (not ('Infinity'::real <= any (ohmic))),
  constraint only_measured_volts check (not ('Infinity'::real <= any (volts))),
  constraint only_measured_celsius check (not ('Infinity'::real <= any (celsius))),
  constraint only_measured_gravity check (not ('Infinity'::real <= any (gravity))),
  constraint only_measured_links check (not ('Infinity'::real <= any (link_microohms)))
  -- a string of 240 jars stays in its row, uncompressed: reading a history never leaves the table's own pages
) with (toast_tuple_target = 8160);
-- nobody searches inside the arrays: without statistics of them, analyze stays cheap
alter table survey
  alter column ohmic set statistics 0, alter column volts set statistics 0, alter column celsius set statistics 0,
  alter column gravity set statistics 0, alter column link_microohms set statistics 0;
create index survey_by_id on survey (id);
create index survey_by_upload on survey (upload_id) where upload_id is not null;
create trigger survey_append_only before update or delete or truncate on survey
  for each statement execute function refuse_change();

-- Voided (wrongly accepted) or superseded (a corrected survey took its place). Undoing is one more row.
-- The keys carry the string and the time, so that a survey can only be superseded by one of its own string.
create table survey_withdrawal (
  id            bigint generated always as identity primary key,
  string_id     bigint not null,
  taken_at      timestamptz not null,
  survey_id     bigint not null,
  kind          text not null check (kind in ('VOIDED', 'SUPERSEDED', 'RESTORED')),
  superseded_by bigint,
  superseded_by_taken_at timestamptz,
  at            timestamptz not null,
  by            text not null,
  reason        text not null check (reason <> ''),
  check ((kind = 'SUPERSEDED') = (superseded_by is not null)),
  check ((superseded_by is null) = (superseded_by_taken_at is null)),
  check (superseded_by <> survey_id),
  foreign key (string_id, taken_at, survey_id) references survey (string_id, taken_at, id),
  foreign key (string_id, superseded_by_taken_at, superseded_by) references survey (string_id, taken_at, id)
);
create index survey_withdrawal_survey on survey_withdrawal (survey_id, id desc);
create trigger survey_withdrawal_append_only before update or delete or truncate on survey_withdrawal
  for each statement execute function refuse_change();

-- The withdrawals in force: the last word on a survey, unless that word is its restoration.
create view withdrawn_survey as
select w.* from survey_withdrawal w
where w.kind <> 'RESTORED'
  and not exists (select from survey_withdrawal later where later.survey_id = w.survey_id and later.id > w.id);

-- What counts today.
create view standing_survey as
select s.* from survey s
where not exists (select from withdrawn_survey w where w.survey_id = s.id);

-- For people who ask in SQL: one row a jar reading, one row a strap reading.
create view jar_reading as
select s.string_id, s.id as survey_id, s.taken_at, s.taken_on, r.position::integer as position,
       s.ohmic_kind, r.ohmic, s.volts[r.position] as volts, s.celsius[r.position] as celsius,
       s.gravity[r.position] as gravity
from standing_survey s, unnest(s.ohmic) with ordinality as r(ohmic, position);

create view link_reading as
select s.string_id, s.id as survey_id, s.taken_at, s.taken_on,
       ((r.n - 1) / s.straps_per_link)::integer as ordinal,
       ((r.n - 1) % s.straps_per_link + 1)::integer as strap,
       r.microohms
from standing_survey s, unnest(s.link_microohms) with ordinality as r(microohms, n)
where r.microohms is not null;
