-- Ids are made by the service; times are instants; dates are local to the unit's depot.

create table idempotent_answer (
  actor varchar(100) not null,
  idempotency_key varchar(200) not null,
  fingerprint varchar(64) not null,
  status integer,
  body text,
  created_at timestamp with time zone not null,
  primary key (actor, idempotency_key)
);

-- fleet
create table depot (
  code varchar(40) primary key,
  name varchar(100) not null,
  zone varchar(64) not null,
  season_opens varchar(5) not null,
  season_closes varchar(5) not null,
  desk_mail varchar(254)
);
create table unit (
  id uuid primary key,
  number varchar(40) not null unique,
  vin varchar(40),
  kind varchar(20) not null,
  depot_code varchar(40) not null references depot (code),
  length_metres numeric(6,3) not null,
  height_metres numeric(6,3) not null,
  surface varchar(30) not null,
  footing varchar(20) not null,
  membrane_system varchar(100),
  confirmed_by varchar(100),
  confirmed_on date,
  sealant varchar(100),
  installed_on date,
  storage varchar(20) not null,
  season_opens varchar(5),
  season_closes varchar(5),
  in_service_from date not null,
  out_of_service_on date,
  out_of_service_why varchar(500),
  created_at timestamp with time zone not null,
  version integer not null
);
create index unit_by_depot on unit (depot_code, number);

-- use
create table rental (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  out_at timestamp with time zone not null,
  back_at timestamp with time zone,
  reference varchar(100),
  unique (unit_id, out_at)
);
create table use_pattern (
  unit_id uuid primary key references unit (id),
  pattern varchar(20) not null,
  reason varchar(500) not null,
  set_by varchar(100),
  set_at timestamp with time zone not null,
  set_until date
);

-- returns
create table return_report (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  returned_at timestamp with time zone not null,
  note varchar(20000) not null,
  language varchar(2),
  odometer_km integer,
  reported_by varchar(100),
  filed_at timestamp with time zone not null,
  filed_by varchar(100) not null,
  verdict varchar(20) not null,
  reading_language varchar(2) not null,
  score double precision not null,
  reason varchar(1000) not null,
  evidence text not null
);
create index return_report_by_unit on return_report (unit_id, returned_at);
create table roof_mark (
  report_id uuid not null references return_report (id),
  position integer not null,
  x double precision not null,
  y double precision not null,
  kind varchar(40) not null,
  primary key (report_id, position)
);
create table contact_question (
  id uuid primary key,
  report_id uuid not null unique references return_report (id),
  text varchar(500) not null,
  asked_at timestamp with time zone not null,
  contact boolean,
  answered_by varchar(100),
  answered_why varchar(2000),
  answered_at timestamp with time zone
);
create table strike (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  report_id uuid references return_report (id),
  source varchar(20) not null,
  seen_at timestamp with time zone not null,
  words varchar(2000) not null,
  raised_by varchar(100) not null,
  raised_at timestamp with time zone not null
);
create index strike_by_unit on strike (unit_id, seen_at);

-- care
create table hold (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  cause varchar(20) not null,
  cause_id uuid not null,
  words varchar(2000) not null,
  state varchar(20) not null,
  opened_at timestamp with time zone not null,
  opened_by varchar(100) not null,
  released_at timestamp with time zone,
  released_by varchar(100),
  statement varchar(2000),
  unique (cause, cause_id)
);
create index hold_by_state on hold (state, unit_id);
create index hold_by_unit on hold (unit_id, opened_at);
create table care_task (
  id uuid primary key,
  unit_id uuid not null references unit (id),
  depot_code varchar(40) not null references depot (code),
  kind varchar(30) not null,
  origin varchar(30) not null,
  rule_id varchar(60),
  rule_version integer,
  why varchar(1000) not null,
  opens date not null,
  due date not null,
  late date not null,
  due_at timestamp with time zone not null,
  strike_id uuid references strike (id),
  state varchar(20) not null,
  assignee varchar(100),
  touched boolean not null,
  open_key varchar(120) unique,
  created_at timestamp with time zone not null,
  created_by varchar(100) not null,
  done_at timestamp with time zone,
  done_on date,
  version integer not null
);
create index care_task_by_state on care_task (state, depot_code, due_at);
create index care_task_by_unit on care_task (unit_id, created_at);
create table care_task_step (
  id uuid primary key,
  task_id uuid not null references care_task (id),
  position integer not null,
  at timestamp with time zone not null,
  who varchar(100) not null,
  state varchar(20) not null,
  words varchar(2000) not null,
  unique (task_id, position)
);
create table sweep_run (
  id uuid primary key,
  depot_code varchar(40) references depot (code),
  state varchar(20) not null,
  asked_by varchar(100) not null,
  started_at timestamp with time zone not null,
  finished_at timestamp with time zone,
  units integer not null,
  created integer not null,
  called_off integer not null,
  error varchar(2000)
);
create index sweep_run_by_start on sweep_run (started_at);
create table sweep_failure (
  sweep_id uuid not null references sweep_run (id),
  unit_number varchar(40) not null,
  message varchar(1000) not null,
  primary key (sweep_id, unit_number)
);

-- people
create table staff (
  username varchar(100) primary key,
  full_name varchar(200) not null,
  mail varchar(254) not null,
  language varchar(2) not null,
  role varchar(20) not null,
  password_hash varchar(100),
  active boolean not null,
  created_at timestamp with time zone not null
);
create table staff_depot (
  username varchar(100) not null references staff (username),
  depot_code varchar(40) not null references depot (code),
  primary key (username, depot_code)
);
create table staff_session (
  token_hash varchar(64) primary key,
  username varchar(100) not null references staff (username),
  created_at timestamp with time zone not null,
  last_seen_at timestamp with time zone not null,
  expires_at timestamp with time zone not null
);
create table setup_link (
  token_hash varchar(64) primary key,
  created_at timestamp with time zone not null,
  expires_at timestamp with time zone not null,
  used_at timestamp with time zone
);

-- alerts
create table outbox_mail (
  id uuid primary key,
  message_id varchar(200) not null unique,
  kind varchar(30) not null,
  priority integer not null,
  recipient_name varchar(200) not null,
  recipient varchar(254) not null,
  subject varchar(500) not null,
  text_body text not null,
  html_body text not null,
  task_id uuid references care_task (id),
  state varchar(20) not null,
  attempts integer not null,
  next_attempt_at timestamp with time zone not null,
  last_error varchar(2000),
  created_at timestamp with time zone not null,
  sent_at timestamp with time zone
);
create index outbox_mail_waiting on outbox_mail (state, priority, next_attempt_at);
