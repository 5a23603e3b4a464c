-- The book as it first was: jobs with their moves, drawings, plannings and progress, and the shop's own pages.
-- Days are ISO 8601 dates, moments ISO 8601 in UTC, stages the trade's words, findings and deeds JSON.

create table shop (
  id integer primary key check (id = 1),
  name text not null,
  unit text not null check (unit in ('mm', 'in')),
  first_job integer not null
) strict;

create table shop_edition (
  edition integer primary key,
  who text not null,
  at text not null
) strict;

create table shop_text (
  edition integer not null references shop_edition (edition),
  name text not null,
  text text not null,
  primary key (edition, name)
) strict;

create table job (
  number integer primary key,
  asset text not null,
  wants text not null,
  asker text not null,
  count integer not null check (count > 0),
  wanted_by text,
  asked_on text not null,
  stage text not null,
  waits_for text,
  stopped_at text,
  version integer not null,
  check ((stage = 'stopped') = (waits_for is not null)),
  check ((stage = 'stopped') = (stopped_at is not null))
) strict;

create index job_by_stage on job (stage);

create table move (
  job integer not null references job (number),
  number integer not null,
  from_stage text not null,
  to_stage text not null,
  note text not null,
  who text not null,
  at text not null,
  primary key (job, number)
) strict;

create table part (
  job integer not null references job (number),
  version integer not null,
  text text not null,
  drawn integer not null check (drawn in (0, 1)),
  title text not null,
  drawing text not null,
  issue text not null,
  material text not null,
  who text not null,
  at text not null,
  primary key (job, version)
) strict;

create table method (
  job integer not null references job (number),
  number integer not null,
  issue text not null,
  version integer not null,
  count integer not null,
  edition integer not null,
  found integer not null check (found in (0, 1)),
  finding text not null,
  who text not null,
  at text not null,
  primary key (job, number),
  foreign key (job, version) references part (job, version)
) strict;

create table progress (
  job integer not null references job (number),
  number integer not null,
  method integer not null,
  deed text not null,
  who text not null,
  at text not null,
  primary key (job, number),
  foreign key (job, method) references method (job, number)
) strict;

-- What was entered stays as it was entered.
create trigger move_is_kept before update on move begin select raise(abort, 'moves are only added'); end;
create trigger move_stays before delete on move begin select raise(abort, 'moves are only added'); end;
create trigger part_is_kept before update on part begin select raise(abort, 'drawings are only added'); end;
create trigger part_stays before delete on part begin select raise(abort, 'drawings are only added'); end;
create trigger method_is_kept before update on method begin select raise(abort, 'plannings are only added'); end;
create trigger method_stays before delete on method begin select raise(abort, 'plannings are only added'); end;
create trigger progress_is_kept before update on progress begin select raise(abort, 'progress is only added'); end;
create trigger progress_stays before delete on progress begin select raise(abort, 'progress is only added'); end;
create trigger job_stays before delete on job begin select raise(abort, 'jobs are only added'); end;
