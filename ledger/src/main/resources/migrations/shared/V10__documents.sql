-- Records that are read and written whole, by kind and key: no columns of their own are searched or summed.
create table document (
  kind text not null,
  key text not null,
  body text not null,
  primary key (kind, key)
) ${strict};
