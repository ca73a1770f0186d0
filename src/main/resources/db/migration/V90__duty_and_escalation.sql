-- Weekly turns of duty; times are local to the depot, as HH:mm. A turn that does not end after its start ends the day after.
create table duty_turn (
  id uuid primary key,
  depot_code varchar(40) not null references depot (code),
  weekday integer not null check (weekday between 1 and 7),
  starts varchar(5) not null,
  ends varchar(5) not null,
  username varchar(100) not null references staff (username),
  place integer not null check (place between 1 and 9),
  unique (depot_code, weekday, starts, username)
);
create table duty_absence (
  id uuid primary key,
  username varchar(100) not null references staff (username),
  from_on date not null,
  until_on date not null,
  why varchar(200),
  check (from_on <= until_on)
);
create index duty_absence_by_person on duty_absence (username, until_on);
create table duty_swap (
  id uuid primary key,
  depot_code varchar(40) not null references depot (code),
  on_date date not null,
  giver varchar(100) not null references staff (username),
  taker varchar(100) not null references staff (username),
  noted_by varchar(100) not null,
  noted_at timestamp with time zone not null,
  unique (depot_code, on_date, giver),
  check (giver <> taker)
);
-- The steps that were taken on the ladder of a strike; the key keeps two nodes from taking one twice.
create table ladder_step (
  task_id uuid not null references care_task (id),
  climb integer not null,
  rung varchar(20) not null,
  turn integer not null,
  reason varchar(20) not null,
  due_at timestamp with time zone not null,
  taken_at timestamp with time zone not null,
  told text not null,
  primary key (task_id, climb, rung, turn)
);
