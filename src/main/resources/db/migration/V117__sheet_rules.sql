-- jobs: what is done on a sheet beside findings: cleaners, washes, stops, starts, sealants, treatments. Only ever added.
create table job_sheet_event (
  id uuid primary key,
  task_id uuid not null references care_task (id),
  position integer not null,
  kind varchar(30) not null,
  subject varchar(200),
  words varchar(2000) not null,
  moment timestamp with time zone not null,
  recorded_at timestamp with time zone not null,
  recorded_by varchar(100) not null,
  by_link boolean not null,
  unique (task_id, position)
);
create index job_sheet_event_by_kind on job_sheet_event (kind, task_id);

-- jobs: what a coordinator has to decide, and what was decided.
create table job_choice (
  task_id uuid primary key references care_task (id),
  sheet_id uuid not null references job_sheet (task_id)
);
create table job_choice_reason (
  task_id uuid not null references job_choice (task_id),
  position integer not null,
  work varchar(30) not null,
  words text not null,
  primary key (task_id, position)
);
create table job_decision (
  task_id uuid primary key references job_choice (task_id),
  chosen varchar(30) not null,
  reason varchar(1000) not null,
  decided_at timestamp with time zone not null,
  decided_by varchar(100) not null
);

-- jobs: who vouched for the membrane system of a roof: the dealer or maker, or the coordinator in their place.
create table job_membrane_word (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  task_id uuid not null references care_task (id),
  overruled boolean not null,
  membrane_system varchar(100) not null,
  source varchar(100) not null,
  given_on date not null,
  recorded_at timestamp with time zone not null,
  recorded_by varchar(100) not null
);
create index job_membrane_word_by_unit on job_membrane_word (unit_id, recorded_at);
