-- The care rules that were in force, one edition after the other; the last one is. Never changed.
create table care_rules_edition (
  number integer primary key,
  content text not null,
  from_file boolean not null,
  adopted_at timestamp with time zone not null,
  adopted_by varchar(100) not null,
  reason varchar(500) not null
);
-- Other rules tried on the whole fleet: what would change. Nothing of it is done.
create table rule_trial (
  id uuid primary key,
  state varchar(20) not null,
  content text not null,
  against integer not null references care_rules_edition (number),
  asked_by varchar(100) not null,
  asked_at timestamp with time zone not null,
  finished_at timestamp with time zone,
  units_in_all integer not null,
  units integer not null,
  different integer not null,
  earlier integer not null,
  later integer not null,
  created integer not null,
  called_off integer not null,
  failed integer not null,
  error varchar(2000)
);
create index rule_trial_by_time on rule_trial (asked_at);
create table rule_trial_change (
  trial_id uuid not null references rule_trial (id),
  position integer not null,
  unit_number varchar(40) not null,
  depot_code varchar(40) not null,
  due_now date,
  due_tried date,
  created integer not null,
  called_off integer not null,
  why varchar(1000) not null,
  primary key (trial_id, position)
);
