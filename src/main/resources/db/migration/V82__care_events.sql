-- What happened to a roof and asks for an inspection: water inside, hail or windstorm, a part lost.
create table care_event (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  kind varchar(20) not null,
  seen_at timestamp with time zone not null,
  note varchar(2000) not null,
  reported_by varchar(100) not null,
  reported_at timestamp with time zone not null,
  entered_by varchar(100) not null
);
create index care_event_by_unit on care_event (unit_id, reported_at);
alter table care_task add column event_id uuid references care_event (id);
create index care_task_by_event on care_task (event_id);
-- What the rules would ask of a task that a person has in hand and that they therefore leave alone.
alter table care_task add column question varchar(1500);
