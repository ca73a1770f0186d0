-- When a unit left and came back, since when its season counts, and who changed what is known of it.
alter table unit add column away_since date;
alter table unit add column sold boolean default false not null;
update unit set sold = true where out_of_service_on is not null;
-- First day the present season counted for the unit; null when it always did.
alter table unit add column season_since date;
create table unit_change (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  -- Changes made in one act share it, and are read in the order of their fields.
  changed_at timestamp with time zone not null,
  changed_by varchar(100) not null,
  position integer not null,
  field varchar(60) not null,
  old_text varchar(500),
  new_text varchar(500),
  reason varchar(500)
);
create index unit_change_by_unit on unit_change (unit_id, changed_at);
