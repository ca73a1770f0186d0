-- A mail is given up after so many refusals; attempts at a server that could not be reached do not count.
alter table outbox_mail add column refusals integer default 0 not null;
-- Message-ID of the first mail to the same person about the same task.
alter table outbox_mail add column in_reply_to varchar(200);
create index outbox_mail_by_task on outbox_mail (task_id, recipient);
create index outbox_mail_by_creation on outbox_mail (created_at);
