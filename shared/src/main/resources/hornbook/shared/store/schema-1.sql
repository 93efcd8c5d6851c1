-- The books, first shape. Columns are those of the exchange files; "retired" rows are kept and can be brought back.
create table setting (name text primary key, value text not null) strict;
create table number_given (kind text primary key, last integer not null) strict;

create table deed (
  number integer primary key, title text not null, day text not null,
  undo_of integer references deed, undone_by integer references deed) strict;
-- One line a record changed; "before" is the row as it was, null where there was none.
create table feed (
  seq integer primary key autoincrement, deed integer not null references deed,
  kind text not null, id text not null, before text) strict;
create index feed_record on feed (kind, id);
create index feed_deed on feed (deed);
-- Entry files that a deed promised; written out after the commit, and again at opening if that was cut short.
create table entry_pending (path text primary key, content text) strict;

create table cabinet (
  id text primary key, name text not null, "rows" integer not null check ("rows" between 1 and 99),
  "columns" integer not null check ("columns" between 1 and 99), "where" text not null, notes text not null,
  retired integer not null default 0) strict;
create table drawer (
  id text primary key, cabinet text not null references cabinet, "row" integer not null, "column" integer not null,
  label_as_written text not null, written_by text not null, contents_as_found text not null,
  label_state text not null, last_looked_through text, note text not null, retired integer not null default 0) strict;
create unique index drawer_spot on drawer (cabinet, "row", "column") where retired = 0;
create table place (
  id text primary key, name text not null, kind text not null, "where" text not null, model text,
  note text not null, retired integer not null default 0) strict;
create table supplier (
  id text primary key, name text not null, place text not null, lead_days_observed text not null,
  packs text not null, verdict text not null, why text not null, retired integer not null default 0) strict;
create table horn (
  id text primary key, model text not null, make text, instrument text not null, serial text not null, sold_as text,
  year_about integer, owner_code text, first_seen text, identified_by text not null, sureness text not null,
  note text not null, retired integer not null default 0) strict;
create index horn_model on horn (model);
create table job (
  id text primary key, horn text not null references horn, kind text not null, took_in text not null, promised text,
  done text, status text not null, complaint text not null, quirks_met text not null, went text,
  went_note text not null, quoted_min integer, minutes_total integer, owner_code text, note text not null,
  retired integer not null default 0) strict;
create index job_horn on job (horn);
create table lot (
  id text primary key, drawer text references drawer, place text references place, item text not null,
  title text not null, fits_makes text not null, fits_models text not null, dimensions text not null, thread text,
  material text not null, colour text not null, state text not null, rough text, reserve text not null,
  keepsake text not null, supplier text references supplier, pack integer, note text not null,
  retired integer not null default 0, check ((drawer is null) <> (place is null))) strict;
create index lot_drawer on lot (drawer);
create index lot_place on lot (place);
create index lot_item on lot (item);
create table tool (
  id text primary key, title text not null, drawer text references drawer, place text references place,
  serves text not null, state text not null, error_mm text not null, error_checked text, error_note text not null,
  note text not null, retired integer not null default 0) strict;
create table member (
  id text primary key, "set" text not null references tool, kind text not null, member text not null,
  state text not null, lent_to text, since text, note text not null, retired integer not null default 0) strict;
create index member_set on member ("set");
create table "order" (
  id text primary key, order_ref text not null, lot text not null references lot, qty integer not null,
  supplier text not null references supplier, ordered_on text not null, retired integer not null default 0) strict;

-- The ledger: lines are added, never changed. The count of a lot is the sum of its lines, kept in balance.
create table movement (
  id text primary key, date text not null, lot text not null references lot, kind text not null, qty integer not null,
  job text references job, supplier text references supplier, order_ref text, ordered_on text, unit_price text,
  note text not null, retired integer not null default 0 check (retired = 0)) strict;
create index movement_lot on movement (lot);
create index movement_job on movement (job);
create table balance (lot text primary key references lot, qty integer not null) strict;
create trigger movement_counts after insert on movement begin
  insert into balance (lot, qty) values (new.lot, new.qty)
  on conflict (lot) do update set qty = qty + excluded.qty;
end;
create trigger movement_stays before update on movement begin select raise(abort, 'the ledger is only added to'); end;
create trigger movement_kept before delete on movement begin select raise(abort, 'the ledger is only added to'); end;
create view balance_wrong as
  select b.lot, b.qty as kept, coalesce(s.qty, 0) as summed
  from balance b left join (select lot, sum(qty) as qty from movement group by lot) s on s.lot = b.lot
  where b.qty <> coalesce(s.qty, 0);

create table task_time (
  id text primary key, job text not null references job, task text not null, count integer not null,
  part text not null, date text not null, minutes integer not null check (minutes >= 0), who text not null,
  retired integer not null default 0) strict;
create index task_time_job on task_time (job);
create table finding (
  id text primary key, job text not null references job, horn text not null references horn, date text not null,
  what text not null, "where" text not null, value text not null, unit text not null,
  as_found_or_left text not null, tool text, note text not null, retired integer not null default 0) strict;
create index finding_job on finding (job);
create index finding_horn on finding (horn);
create index finding_what on finding (what);
create table part_used (
  id text primary key, job text not null references job, lot text not null references lot, qty integer not null,
  movement text references movement, what_for text not null, retired integer not null default 0) strict;
create index part_used_job on part_used (job);
create index part_used_lot on part_used (lot);
create table pad_used (
  id text primary key, job text not null references job, horn text not null references horn, cup text not null,
  measured_mm text, size_mm text not null, thickness_mm text, lot text references lot,
  movement text references movement, note text not null, retired integer not null default 0) strict;
create index pad_used_job on pad_used (job);
create table trial_horn (
  id text primary key, looks integer not null, observations text not null, serial text not null, truth text not null,
  year_truth integer, retired integer not null default 0) strict;

create table clock (
  id text primary key, job text not null references job, task text not null, count integer not null,
  since text not null, who text not null, retired integer not null default 0) strict;
create table consent (
  id text primary key, job text not null references job, day text not null, what text not null,
  said_by text not null, note text not null, retired integer not null default 0) strict;
create index consent_job on consent (job);
create table timer (
  id text primary key, job text not null references job, what text not null, since text not null,
  ready text not null, retired integer not null default 0) strict;
create table whereabouts (
  id text primary key, job text not null references job, piece text not null, "where" text not null,
  waits_for text not null, since text not null, retired integer not null default 0) strict;
create index whereabouts_job on whereabouts (job);
create table map_row (
  id text primary key, job text not null references job, horn text not null references horn, key text not null,
  cup text, turns_on text not null, rod text not null, diameter_mm text, length_mm text, thread text,
  draws_out text not null, spring text not null, spring_mm text, spring_length_mm text, cup_inside_mm text,
  rim_inside_mm text, rim_outside_mm text, resonator_mm text, retired integer not null default 0) strict;
create index map_row_horn on map_row (horn);
create table taken_down (
  id text primary key, job text not null references job, step integer not null, piece text not null,
  how text not null, reason text not null, retired integer not null default 0) strict;
create index taken_down_job on taken_down (job);
