-- people: links that open the sheet of one job. The link itself is kept nowhere; only the hash of its token is.
create table job_link (
  token_hash varchar(64) primary key,
  job_id uuid not null,
  username varchar(100) not null references staff (username),
  made_at timestamp with time zone not null,
  expires_at timestamp with time zone not null,
  revoked_at timestamp with time zone
);
create index job_link_by_job on job_link (job_id);
