-- jobs: what was found and signed. Rows are only ever added.
create table job_finding (
  id uuid primary key,
  task_id uuid not null references care_task (id),
  position integer not null,
  zone varchar(120) not null,
  kind varchar(20) not null,
  depth varchar(20),
  extent varchar(20),
  length_cm double precision,
  note varchar(2000) not null,
  recorded_at timestamp with time zone not null,
  recorded_by varchar(100) not null,
  unique (task_id, position)
);
create table job_sheet (
  task_id uuid primary key references care_task (id),
  unit_id uuid not null references unit (id),
  work varchar(30),
  cautions_read boolean not null,
  dry_at_inspection boolean not null,
  statement varchar(2000) not null,
  signed_name varchar(100) not null,
  signed_by varchar(100) not null,
  signed_at timestamp with time zone not null,
  verdict varchar(20) not null
);
create index job_sheet_by_unit on job_sheet (unit_id, signed_at);
-- What the sheet looked into: the strikes it answers and itself.
create table job_sheet_cause (
  task_id uuid not null references job_sheet (task_id),
  cause_id uuid not null,
  primary key (task_id, cause_id)
);
create table job_sheet_reason (
  task_id uuid not null references job_sheet (task_id),
  position integer not null,
  words text not null,
  primary key (task_id, position)
);
create table job_follow_up (
  task_id uuid primary key references care_task (id),
  sheet_id uuid not null references job_sheet (task_id),
  work varchar(30) not null,
  urgency varchar(20) not null,
  due_at timestamp with time zone not null,
  holds boolean not null
);
create index job_follow_up_by_sheet on job_follow_up (sheet_id);

-- What a release certified: repair unnecessary, repaired, no contact.
alter table hold add column ground varchar(40);
