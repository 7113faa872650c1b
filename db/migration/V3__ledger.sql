-- Accepted surveys. Append-only: a survey is never changed and never deleted, only withdrawn by a row of its own.
--
-- One row a survey with real[] columns: about 16 bytes a reading instead of 80, and the readings of a string's whole
-- history come back in one short range scan. Index 1 of an array is position 1 (SQL arrays count from 1).
-- A value that was not measured is a NULL element; NaN is never stored, because it would poison every aggregate.

create sequence survey_id increment by 50;

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
  ohmic_hertz         real,
  ambient_celsius     real,
  string_volts        real,
  float_amps          real,
  ripple_amps         real,
  ripple_volts        real,
  injected_amps       real,
  clamped_amps        real,
  on_float            boolean not null default true,
  note                text not null default '',
  ohmic               real[] not null,
  volts               real[],
  celsius             real[],
  gravity             real[],
  -- straps of link 0, then of link 1, ... N; each link takes straps_per_link elements
  straps_per_link     smallint not null default 1 check (straps_per_link between 1 and 8),
  link_microohms      real[],
  primary key (string_id, taken_at, id),
  check (not ('NaN'::real = any (ohmic))),
  check (volts is null or array_length(volts, 1) = array_length(ohmic, 1)),
  check (celsius is null or array_length(celsius, 1) = array_length(ohmic, 1)),
  check (gravity is null or array_length(gravity, 1) = array_length(ohmic, 1)),
  check (link_microohms is null
         or array_length(link_microohms, 1) = (array_length(ohmic, 1) + 1) * straps_per_link)
) with (toast_tuple_target = 8160);
create index survey_by_id on survey (id);
create index survey_by_upload on survey (upload_id) where upload_id is not null;
create trigger survey_append_only before update or delete or truncate on survey
  for each statement execute function refuse_change();

-- Voided (wrongly accepted) or superseded (a corrected survey took its place). Undoing is one more row.
create table survey_withdrawal (
  id            bigint generated always as identity primary key,
  survey_id     bigint not null,
  kind          text not null check (kind in ('VOIDED', 'SUPERSEDED', 'RESTORED')),
  superseded_by bigint,
  at            timestamptz not null,
  by            text not null,
  reason        text not null check (reason <> ''),
  check ((kind = 'SUPERSEDED') = (superseded_by is not null))
);
create index survey_withdrawal_survey on survey_withdrawal (survey_id, id desc);
create trigger survey_withdrawal_append_only before update or delete or truncate on survey_withdrawal
  for each statement execute function refuse_change();

-- What counts today: every survey whose last withdrawal, if any, is a restoration.
create view standing_survey as
select s.* from survey s
where coalesce((select w.kind from survey_withdrawal w where w.survey_id = s.id order by w.id desc limit 1),
               'RESTORED') = 'RESTORED';

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
