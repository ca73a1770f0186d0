-- One row per depot and Monday whose look ahead was written; keeps a second run from writing it again.
create table digest_week (
  depot_code varchar(40) not null references depot (code),
  monday date not null,
  written_at timestamp with time zone not null,
  primary key (depot_code, monday)
);
-- The digest that says what this mail said, when it waited too long to go by itself.
alter table outbox_mail add column merged_into uuid;
create index outbox_mail_by_digest on outbox_mail (merged_into);
