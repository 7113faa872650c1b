-- When each string is to be visited next, and why. Recomputed whenever the string is assessed or changed in the register.
create table next_date (
  string_id       bigint primary key references battery_string,
  due_on          date not null,
  governs         text not null check (governs in ('INTERVAL', 'RECHECK')),
  reason          text not null,
  interval_due_on date not null,
  recheck_by      date
);
create index next_date_due on next_date (due_on);
