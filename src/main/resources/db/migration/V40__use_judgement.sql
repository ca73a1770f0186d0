-- What the rental log last said of a unit's use. Kept because a unit near a border stays what it was.
create table use_judgement (
  unit_id uuid primary key references unit (id),
  pattern varchar(20) not null,
  since date,
  why varchar(500) not null,
  judged_on date not null
);
create index rental_by_return on rental (unit_id, back_at);
