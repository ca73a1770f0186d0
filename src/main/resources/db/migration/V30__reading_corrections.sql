-- What people said about a note that its reading left open or had wrong. Rows are added, never changed.
create table reading_correction (
  id uuid primary key,
  report_id uuid not null references return_report (id),
  contact boolean not null,
  source varchar(20) not null,
  said_by varchar(100) not null,
  why varchar(2000) not null,
  said_at timestamp with time zone not null
);
create index reading_correction_by_time on reading_correction (said_at, id);
create index reading_correction_by_report on reading_correction (report_id);
