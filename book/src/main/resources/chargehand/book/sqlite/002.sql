-- Search: the words of every job and of its latest drawing, kept up by the tables themselves.

create virtual table job_words using fts5 (
  number, asset, wants, asker, title, drawing, material,
  tokenize = 'unicode61 remove_diacritics 2'
);

insert into job_words (rowid, number, asset, wants, asker, title, drawing, material)
select job.number, job.number, job.asset, job.wants, job.asker,
  coalesce(part.title, ''), coalesce(part.drawing, ''), coalesce(part.material, '')
from job
left join part on part.job = job.number
  and part.version = (select max(version) from part as later where later.job = job.number);

create trigger job_words_added after insert on job begin
  insert into job_words (rowid, number, asset, wants, asker, title, drawing, material)
  values (new.number, new.number, new.asset, new.wants, new.asker, '', '', '');
end;

create trigger job_words_changed after update of asset, wants, asker on job begin
  update job_words set asset = new.asset, wants = new.wants, asker = new.asker where rowid = new.number;
end;

create trigger job_words_drawn after insert on part begin
  update job_words set title = new.title, drawing = new.drawing, material = new.material where rowid = new.job;
end;
