-- What was asked of each method beside the part, one wish a line.

alter table method add column wishes text not null default '';
