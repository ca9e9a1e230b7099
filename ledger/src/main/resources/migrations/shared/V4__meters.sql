-- The pH meters of the workshop and how they were calibrated. A calibration is added, never changed.
create table ph_meter (
  name text not null primary key,
  body text not null
) ${strict};

create table calibration (
  number ${int64} not null primary key,
  meter  text     not null,
  at_ms  ${int64} not null,
  body   text     not null
) ${strict};

create index calibration_at on calibration (at_ms);
