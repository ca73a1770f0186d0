-- One row per depot and local day whose digests were written; keeps a second run from writing them again.
create table digest_day (
  depot_code varchar(40) not null references depot (code),
  on_date date not null,
  written_at timestamp with time zone not null,
  primary key (depot_code, on_date)
);
