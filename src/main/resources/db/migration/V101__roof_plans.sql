-- The roof plans of single units, every version of them. Rows are only added; a unit without any has the plan of its kind.
create table roof_plan (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  version integer not null,
  width_metres double precision not null,
  saved_at timestamp with time zone not null,
  saved_by varchar(100) not null,
  unique (unit_id, version)
);
create table roof_plan_object (
  plan_id uuid not null references roof_plan (id),
  position integer not null,
  object_id varchar(60) not null,
  type varchar(30) not null,
  name varchar(60) not null,
  x double precision not null,
  y double precision not null,
  length_metres double precision not null,
  width_metres double precision not null,
  primary key (plan_id, position)
);
