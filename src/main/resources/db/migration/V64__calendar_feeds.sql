-- A calendar that programs read by a private address. The address itself is kept nowhere; only its hash is.
create table calendar_feed (
  id uuid primary key,
  token_hash varchar(64) not null unique,
  tech varchar(100) references staff (username),
  depot_code varchar(40) references depot (code),
  made_at timestamp with time zone not null,
  made_by varchar(100) not null,
  revoked_at timestamp with time zone,
  check (tech is null and depot_code is not null or tech is not null and depot_code is null)
);
