-- What stands on the label of a version besides the formula.
create table label_sheet (
  product_id ${int64} not null,
  number integer not null,
  body text not null,
  primary key (product_id, number),
  foreign key (product_id, number) references formula_version (product_id, number)
) ${strict};
