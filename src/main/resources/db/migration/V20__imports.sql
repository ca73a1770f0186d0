-- Imports of CSV files: how far each is, and the rows that did not go in.
create table import_run (
  id uuid primary key,
  kind varchar(20) not null,
  state varchar(20) not null,
  asked_by varchar(100) not null,
  asked_at timestamp with time zone not null,
  finished_at timestamp with time zone,
  -- The process that works on it, and when it last did: a run whose process is gone was cut off.
  worker uuid not null,
  touched_at timestamp with time zone not null,
  delimiter varchar(1) not null,
  header text not null,
  ignored_columns text not null,
  file_bytes bigint not null,
  read_bytes bigint not null,
  row_count integer not null,
  accepted integer not null,
  rejected integer not null,
  problem varchar(2000)
);
create table import_rejection (
  run_id uuid not null references import_run (id),
  line_number integer not null,
  errors text not null,
  cells text not null,
  primary key (run_id, line_number)
);
create index rental_by_start on rental (out_at, id);
