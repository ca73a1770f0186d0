-- Programs of the house that are told of strikes, holds and releases.
create table webhook_target (
  id uuid primary key,
  address varchar(500) not null,
  depot_code varchar(40) references depot (code),
  kinds varchar(100) not null,
  secret varchar(100) not null,
  paused boolean default false not null,
  made_at timestamp with time zone not null,
  made_by varchar(100) not null,
  removed_at timestamp with time zone
);
-- How a target fares. Its row is locked by whoever sends to it, so that deliveries go one after another.
create table webhook_pace (
  target_id uuid primary key references webhook_target (id),
  failures integer default 0 not null,
  rests_until timestamp with time zone not null
);
create table webhook_delivery (
  id uuid primary key,
  target_id uuid not null references webhook_target (id),
  kind varchar(20) not null,
  priority integer not null,
  body text not null,
  state varchar(20) not null,
  attempts integer not null,
  refusals integer not null,
  next_attempt_at timestamp with time zone not null,
  created_at timestamp with time zone not null,
  sent_at timestamp with time zone
);
create index webhook_delivery_waiting on webhook_delivery (state, priority, next_attempt_at);
create index webhook_delivery_by_target on webhook_delivery (target_id, created_at);
-- The log: each attempt with the answer's code and how long it took.
create table webhook_attempt (
  id uuid primary key,
  delivery_id uuid not null references webhook_delivery (id),
  at timestamp with time zone not null,
  status integer,
  millis bigint not null,
  error varchar(2000)
);
create index webhook_attempt_by_delivery on webhook_attempt (delivery_id, at);
