-- The appointment that a mail makes or withdraws; the sequence counts the changes to a task's appointment.
alter table outbox_mail add column calendar_part text;
alter table outbox_mail add column calendar_method varchar(10);
alter table outbox_mail add column calendar_sequence integer;
