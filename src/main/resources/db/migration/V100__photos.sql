-- photos: the pictures themselves are files named by their hash. A row is never deleted: a photo that was taken away
-- keeps who, when and why.
create table photo (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  source varchar(20) not null,
  source_id uuid not null,
  position integer not null,
  sent_hash varchar(64) not null,
  hash varchar(64) not null,
  bytes bigint not null,
  width integer not null,
  height integer not null,
  zone varchar(120),
  finding integer,
  taken_at timestamp with time zone,
  added_at timestamp with time zone not null,
  added_by varchar(100) not null,
  removed_at timestamp with time zone,
  removed_by varchar(100),
  removed_why varchar(500),
  unique (source_id, sent_hash)
);
create index photo_by_unit on photo (unit_id, added_at);
create index photo_by_hash on photo (hash);
