-- jobs: where on the plan a finding is, and whether it came by the link of a mail.
alter table job_finding add column x double precision;
alter table job_finding add column y double precision;
alter table job_finding add column by_link boolean default false not null;
alter table job_sheet add column by_link boolean default false not null;
-- A finding that was taken back. It stays on record; rows are only ever added.
create table job_finding_withdrawal (
  finding_id uuid primary key references job_finding (id),
  task_id uuid not null references care_task (id),
  withdrawn_at timestamp with time zone not null,
  withdrawn_by varchar(100) not null,
  by_link boolean not null
);
create index job_finding_withdrawal_by_task on job_finding_withdrawal (task_id);
-- Who read which cautions before the work.
create table job_caution_reading (
  id uuid primary key,
  task_id uuid not null references care_task (id),
  username varchar(100) not null,
  cautions varchar(2000) not null,
  read_at timestamp with time zone not null,
  by_link boolean not null
);
create index job_caution_reading_by_task on job_caution_reading (task_id, username);
