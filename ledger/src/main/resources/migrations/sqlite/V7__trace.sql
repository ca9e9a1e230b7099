-- Where things went and came from, beyond the lots that were weighed in (lot_use).

-- Which batch got bulk of which other batch.
create table batch_source (
  from_code text    not null,
  batch_id  integer not null references batch (id),
  primary key (from_code, batch_id)
) strict, without rowid;

create index batch_source_batch on batch_source (batch_id);

-- A lot that was made here: from other lots, or out of a batch. One row for each thing that went into it.
create table lot_origin (
  lot_code  text    not null,
  number    integer not null,
  from_lot  text,
  from_code text,
  mass_ug   integer not null,
  primary key (lot_code, number)
) strict, without rowid;

create index lot_origin_lot on lot_origin (from_lot, lot_code);
create index lot_origin_batch on lot_origin (from_code, lot_code);

-- Who and what a batch had to do with: kind is vessel, balance, person or pack-lot; the name in small letters. Units are
-- containers of a pack lot. Follows from the entries that are not struck.
create table batch_touch (
  kind     text    not null,
  name     text    not null,
  batch_id integer not null references batch (id),
  units    integer not null,
  primary key (kind, name, batch_id)
) strict, without rowid;

create index batch_touch_batch on batch_touch (batch_id);
create index log_entry_at on log_entry (at_ms, batch_id);

-- What happened to a pack lot or a vessel: counts, cleanings. Added, never changed.
create table happening (
  kind   text    not null,
  name   text    not null,
  number integer not null,
  at_ms  integer not null,
  body   text    not null,
  primary key (kind, name, number)
) strict, without rowid;

create trigger happening_stays before update on happening
begin select raise(abort, 'what happened never changes'); end;

create trigger happening_remains before delete on happening
begin select raise(abort, 'what happened is never erased'); end;

-- Documents by the SHA-256 of their bytes.
create table attachment (
  digest text not null primary key,
  name   text not null,
  body   blob not null
) strict;

-- What older logs say already. Struck entries that strike each other are rare: they count as touched here.
insert or ignore into batch_source (from_code, batch_id)
select json_extract(body, '$.event.fromBatch'), batch_id from log_entry where kind = 'bulk-received';

insert or ignore into batch_touch (kind, name, batch_id, units)
select 'vessel', lower(trim(json_extract(body, '$.event.vessel'))), batch_id, 0 from log_entry
where kind in ('poured', 'vessel-ready', 'filled') and json_extract(body, '$.event.vessel') is not null;

insert or ignore into batch_touch (kind, name, batch_id, units)
select 'balance', lower(trim(json_extract(body, '$.event.balance'))), batch_id, 0 from log_entry
where kind = 'poured' and coalesce(json_extract(body, '$.event.balance'), '') <> '';

insert or ignore into batch_touch (kind, name, batch_id, units)
select 'person', lower(trim(json_extract(body, '$.by'))), batch_id, 0 from log_entry
where coalesce(json_extract(body, '$.by'), '') <> '';
