-- The last forecast of each depot, from the feed or entered by hand, and when the feed is asked again.
create table rain_forecast (
  depot_code varchar(40) primary key references depot (code),
  forecast text,
  issued_at timestamp with time zone,
  fetched_at timestamp with time zone,
  last_modified varchar(100),
  failures integer not null,
  problem varchar(500),
  next_try_at timestamp with time zone not null
);
create table rain_by_hand (
  depot_code varchar(40) primary key references depot (code),
  rain_at timestamp with time zone,
  holds_until timestamp with time zone not null,
  entered_by varchar(100) not null,
  entered_at timestamp with time zone not null
);
