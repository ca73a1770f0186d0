-- Where a unit was when it was neither out nor simply in the yard.
create table stay (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  kind varchar(20) not null,
  from_at timestamp with time zone not null,
  until_at timestamp with time zone,
  -- Where it stands in storage, if that is another place than usual.
  place varchar(20),
  note varchar(500),
  noted_by varchar(100) not null,
  noted_at timestamp with time zone not null
);
create index stay_by_unit on stay (unit_id, from_at);
-- Patterns that were set by hand and replaced or ended before their time; the days they counted.
create table use_pattern_past (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  pattern varchar(20) not null,
  reason varchar(500) not null,
  set_by varchar(100),
  set_from date not null,
  set_until date not null
);
create index use_pattern_past_by_unit on use_pattern_past (unit_id);
