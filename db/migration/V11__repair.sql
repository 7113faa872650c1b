-- A corrected file names the survey whose place it is to take. The wish is kept with the upload, because a held file is
-- accepted later, perhaps by somebody else.
alter table upload
  add column supersedes bigint,
  add column supersedes_reason text,
  add constraint a_corrected_file_says_why check ((supersedes is null) = (supersedes_reason is null)),
  add constraint the_reason_is_not_blank check (supersedes_reason <> '');
