-- Second shape: every row carries a sum of its content, every deed the end of a chain over all before it.
-- The tables of records get their column "sum" from the step itself.
alter table feed add column was integer not null default 0;
alter table feed add column "after" integer not null default 0;
alter table deed add column chain blob;
alter table deed add column sum integer not null default 0;
alter table setting add column sum integer not null default 0;
drop table number_given;
create table number_given (
  kind text primary key, last integer not null, width integer not null, sum integer not null) strict;
-- What each own entry file holds; null where it was taken away.
create table entry (path text primary key, content text, sum integer not null) strict;
drop trigger movement_stays;
create trigger movement_stays before update of id, date, lot, kind, qty, job, supplier, order_ref, ordered_on,
  unit_price, note, retired on movement begin select raise(abort, 'the ledger is only added to'); end;
create table photo (
  id text primary key, sha text not null, kept text not null, job text references job, horn text references horn,
  taken text, added text not null, word text not null, retired integer not null default 0,
  sum integer not null default 0) strict;
create index photo_job on photo (job);
create index photo_horn on photo (horn);
create table contact (
  id text primary key, owner text not null, name text not null, reach text not null,
  retired integer not null default 0, sum integer not null default 0) strict;
