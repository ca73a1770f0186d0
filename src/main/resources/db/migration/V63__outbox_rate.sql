-- For counting what a person was sent in the last hour.
create index outbox_mail_by_recipient on outbox_mail (recipient, sent_at);
