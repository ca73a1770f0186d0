-- audit: who changed what, from what to what. Rows are only ever added; the database refuses anything else.
create table audit_entry (
  id uuid primary key,
  position bigint generated always as identity unique,
  unit_id uuid,
  at timestamp with time zone not null,
  who varchar(100) not null,
  what varchar(60) not null,
  area varchar(30) not null,
  subject varchar(60) not null,
  was text,
  became text
);
create index audit_entry_by_unit on audit_entry (unit_id, position);
