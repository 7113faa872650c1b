-- What belongs to a discharge test besides its figures.

alter table capacity_test
  -- the string did not reach its end voltage: it holds at least what was drawn
  add column stopped_early boolean not null default false,
  -- until each position reached its own end voltage, from a record; a jar that did not is a null element
  add column jar_minutes real[] check (not ('Infinity'::real <= any (jar_minutes)));

-- A service test shows that the string carries its duty, not what its capacity is: no duty to test capacity is done by it.
create or replace view standing_capacity_test as
select t.* from capacity_test t
where t.kind <> 'SERVICE' and not exists (select from capacity_test_void x where x.test_id = t.id);

-- The record as it came, byte by byte, kept for ever.
create table capacity_test_file (
  test_id    bigint primary key references capacity_test,
  name       text not null,
  sha256     bytea not null check (length(sha256) = 32),
  content    bytea not null check (sha256 = sha256(content))
);
create trigger capacity_test_file_append_only before update or delete or truncate on capacity_test_file
  for each statement execute function refuse_change();
