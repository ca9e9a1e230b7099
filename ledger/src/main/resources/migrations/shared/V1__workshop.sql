-- Documents stand in "body" as JSON text (docs/file-format.md). The other columns repeat what is searched, sorted or
-- summed, and are written in the same statement as the body. Masses are whole micrograms, moments are milliseconds
-- since 1970 UTC, days are ISO text, flags are 0 or 1.

create table workshop (
  id      integer not null primary key check (id = 1),
  body    text    not null
) ${strict};

create table balance (
  name     text    not null primary key,
  position integer not null,
  body     text    not null
) ${strict};

-- One row per revision. Origin "own" is the maker's; "library" is a starter card as it was when a kept version pinned it.
create table card (
  material_key text    not null,
  revision     integer not null check (revision >= 1),
  origin       text    not null check (origin in ('own', 'library')),
  revised_on   text    not null,
  name         text    not null,
  family       text    not null,
  body         text    not null,
  primary key (material_key, revision)
) ${strict};

create table substance (
  substance_key text    not null,
  revision      integer not null check (revision >= 1),
  inci_name     text    not null,
  body          text    not null,
  primary key (substance_key, revision)
) ${strict};

-- poured_ug and counted_ug are the running sums of lot_use and stock_count.
create table lot (
  code         text    not null primary key,
  material_key text    not null,
  state        text    not null,
  received_on  text    not null,
  expires_on   text,
  received_ug  ${int64} not null,
  poured_ug    ${int64} not null,
  counted_ug   ${int64} not null,
  body         text    not null
) ${strict};

create index lot_material on lot (material_key);

create table stock_count (
  lot_code      text     not null references lot (code),
  number        integer  not null,
  correction_ug ${int64} not null,
  body          text     not null,
  primary key (lot_code, number)
) ${strict};

create table product (
  id   ${int64} not null primary key,
  name text     not null,
  body text     not null
) ${strict};

create table formula_version (
  product_id ${int64} not null references product (id),
  number     integer  not null check (number >= 1),
  edit       integer  not null,
  kept       integer  not null check (kept in (0, 1)),
  body       text     not null,
  primary key (product_id, number)
) ${strict};

create table version_material (
  product_id   ${int64} not null,
  number       integer  not null,
  material_key text     not null,
  primary key (material_key, product_id, number),
  foreign key (product_id, number) references formula_version (product_id, number)
) ${strict};

create index version_material_version on version_material (product_id, number);

-- stage, due_ms, entries, last_ms and head_hash are what the log adds up to; the rest never changes.
create table batch (
  id         ${int64} not null primary key,
  code       text     not null unique,
  product_id ${int64} not null references product (id),
  version    integer,
  opened_on  text     not null,
  body       text     not null,
  stage      text     not null,
  due_ms     ${int64},
  entries    integer  not null,
  last_ms    ${int64},
  head_hash  text     not null,
  foreign key (product_id, version) references formula_version (product_id, number)
) ${strict};

create index batch_stage on batch (stage, id);
create index batch_version on batch (product_id, version, id);

-- hash is SHA-256 over the hash before it, a line feed, and the body.
create table log_entry (
  batch_id   ${int64} not null references batch (id),
  number     integer  not null check (number >= 1),
  request_id text     not null,
  at_ms      ${int64} not null,
  kind       text     not null,
  body       text     not null,
  hash       text     not null,
  primary key (batch_id, number),
  unique (batch_id, request_id)
) ${strict};

-- Which lot went into which batch. By hand: weighed from the bottle; otherwise it came inside bulk of another batch.
create table lot_use (
  batch_id     ${int64} not null,
  entry        integer  not null,
  part         integer  not null,
  lot_code     text     not null,
  material_key text     not null,
  mass_ug      ${int64} not null,
  by_hand      integer  not null check (by_hand in (0, 1)),
  struck       integer  not null check (struck in (0, 1)),
  primary key (batch_id, entry, part),
  foreign key (batch_id, entry) references log_entry (batch_id, number)
) ${strict};

create index lot_use_lot on lot_use (lot_code, batch_id, struck, by_hand, mass_ug);
