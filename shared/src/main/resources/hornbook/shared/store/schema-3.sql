-- Third shape: the work that is planned on a job.
create table planned_task (
  id text primary key, job text not null references job, task text not null, count integer not null,
  retired integer not null default 0, sum integer not null default 0) strict;
create index planned_task_job on planned_task (job);
create index lot_title on lot (title);
