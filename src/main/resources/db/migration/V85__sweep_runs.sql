-- What set a sweep off, and how many units it has before it, so that its progress can be told.
alter table sweep_run add column cause varchar(20) default 'ASKED' not null;
alter table sweep_run add column units_in_all integer default 0 not null;
