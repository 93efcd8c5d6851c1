-- Second shape: every row carries a sum of its content, every deed the end of a chain over all before it.
-- The tables of records get their column "sum" from the step itself.
-- A deed's lines lie between its own "after_seq" and that of the next: no index over the feed's deeds is kept.
create table feed_2 (
  seq integer primary key, deed integer not null references deed, kind text not null, id text not null,
  before text, was integer not null default 0, "after" integer not null default 0) strict;
insert into feed_2 (seq, deed, kind, id, before) select seq, deed, kind, id, before from feed order by seq;
drop table feed;
alter table feed_2 rename to feed;
create index feed_record on feed (kind, id);
alter table deed add column after_seq integer not null default 0;
update deed set after_seq = (select coalesce(max(seq), 0) from feed where deed < number);
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
