-- What the program promises never to change, the file itself refuses to change.

create trigger log_entry_stays before update on log_entry
begin select raise(abort, 'a log entry never changes'); end;

create trigger log_entry_remains before delete on log_entry
begin select raise(abort, 'a log entry is never erased'); end;

create trigger kept_version_stays before update on formula_version when old.kept = 1
begin select raise(abort, 'a kept version never changes'); end;

create trigger kept_version_remains before delete on formula_version when old.kept = 1
begin select raise(abort, 'a kept version is never erased'); end;

create trigger card_stays before update on card
begin select raise(abort, 'a card revision never changes'); end;

create trigger card_remains before delete on card
begin select raise(abort, 'a card revision is never erased'); end;

create trigger stock_count_stays before update on stock_count
begin select raise(abort, 'a stock count never changes'); end;

create trigger stock_count_remains before delete on stock_count
begin select raise(abort, 'a stock count is never erased'); end;

create trigger batch_identity_stays before update of id, code, product_id, version, opened_on, body on batch
begin select raise(abort, 'what a batch is never changes'); end;

create trigger batch_remains before delete on batch
begin select raise(abort, 'a batch is never erased'); end;
