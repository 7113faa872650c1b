-- The work list: what is to be done about strings, jars, links and duties, and whether it helped.

create sequence work_item_id;

-- The state in force of each item; how it came to it stands in work_event.
create table work_item (
  id             bigint primary key default nextval('work_item_id'),
  string_id      bigint not null references battery_string,
  kind           text not null check (kind in ('REMAKE_LINK', 'MEASURE_AGAIN', 'EQUALISE', 'INVESTIGATE', 'REPLACE_JAR',
                                               'TEST_CAPACITY', 'OVERDUE_DUTY')),
  subject        text not null check (subject in ('STRING', 'JAR', 'LINK', 'DUTY')),
  -- position of a jar, ordinal of a link
  unit           integer check (unit >= 0),
  -- the code of a requirement
  requirement    text,
  -- since when that jar sits there, that joint is as it is, or that duty's span counts
  since          date,
  state          text not null check (state in ('RAISED', 'PLANNED', 'DONE', 'PROVEN', 'DISMISSED')),
  urgency        text not null check (urgency in ('RECHECK', 'PLAN', 'ACT')),
  by_on          date,
  reason         text not null check (reason <> ''),
  source         text not null check (source in ('JUDGEMENT', 'REMARK', 'PROGRAMME', 'PERSON')),
  -- in the site's calendar
  raised_on      date not null,
  raised_at      timestamptz not null,
  changed_at     timestamptz not null,
  -- the survey that asked for it last and its day; null where none did
  asked_survey   bigint,
  asked_on       date,
  assignee       text not null default '',
  planned_on     date,
  round_id       bigint references round,
  done_on        date,
  done_by        text,
  done_note      text,
  -- whether a survey, a test or the register says so and not a person's report
  done_by_record boolean,
  proof_kind     text check (proof_kind in ('SURVEY', 'CAPACITY_TEST', 'VISIT', 'REMAKE')),
  proof_id       bigint,
  closed_reason  text check (closed_reason <> ''),
  closed_by_service boolean,
  -- a person's dismissal holds up to this day, or until a later survey asks again where it is null
  quiet_until    date,
  check ((subject in ('JAR', 'LINK')) = (unit is not null)),
  check ((subject = 'DUTY') = (requirement is not null)),
  check (num_nonnulls(done_on, done_by, done_note, done_by_record) in (0, 4)),
  check ((proof_kind is null) = (proof_id is null)),
  check (state not in ('DONE', 'PROVEN') or done_on is not null),
  -- nothing is proven by anybody's word
  check ((state = 'PROVEN') = (proof_id is not null)),
  check ((state = 'DISMISSED') = (closed_reason is not null)),
  check ((closed_reason is null) = (closed_by_service is null)),
  check (state <> 'PLANNED' or planned_on is not null or round_id is not null or assignee <> '')
);
-- one open item for each thing and kind of work
create unique index work_item_open on work_item (string_id, kind, subject, unit, requirement) nulls not distinct
  where state in ('RAISED', 'PLANNED', 'DONE');
create index work_item_string on work_item (string_id);
create index work_item_changed on work_item (state, changed_at desc);
create index work_item_proof on work_item (proof_id) where proof_kind = 'SURVEY';

-- Who did what to an item, when, and how it stood after that. Append-only: what is undone is undone by a row of its own.
create table work_event (
  id            bigint generated always as identity primary key,
  item_id       bigint not null references work_item,
  at            timestamptz not null,
  by            text not null,
  by_service    boolean not null,
  kind          text not null check (kind in ('RAISED', 'STILL_ASKED', 'PLANNED', 'ASSIGNED', 'DONE', 'NOT_CURED',
                                              'PROVEN', 'DISMISSED', 'UNDONE', 'PROOF_WITHDRAWN')),
  -- the day the event is about: planned for, done on, quiet until
  day           date,
  note          text not null default '',
  evidence_kind text check (evidence_kind in ('SURVEY', 'CAPACITY_TEST', 'VISIT', 'REMAKE')),
  evidence_id   bigint,
  -- how the item stood afterwards, so that any past day can be told
  state         text not null check (state in ('RAISED', 'PLANNED', 'DONE', 'PROVEN', 'DISMISSED')),
  urgency       text not null check (urgency in ('RECHECK', 'PLAN', 'ACT')),
  by_on         date,
  reason        text not null,
  assignee      text not null default '',
  check ((evidence_kind is null) = (evidence_id is null)),
  check (kind <> 'PROVEN' or evidence_id is not null)
);
create index work_event_item on work_event (item_id, id);
create trigger work_event_append_only before update or delete or truncate on work_event
  for each statement execute function refuse_change();

-- The earliest reading that work demands of a string beside what its judgement asks, with the reason in words.
create table demanded_reading (
  string_id bigint primary key references battery_string,
  by_on     date not null,
  reason    text not null check (reason <> '')
);

alter table next_date
  add column demanded_by date,
  add check (due_on <= demanded_by),
  drop constraint next_date_governs_check,
  add constraint next_date_governs_check check (governs in ('INTERVAL', 'RECHECK', 'DUTY', 'RISK', 'WORK'));
