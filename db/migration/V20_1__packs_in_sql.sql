-- The rule packs that come with the program, as this version has them: written anew at every start, so that SQL can ask
-- what was asked. The program itself reads its own files, never this table.
create table built_in_rule_pack (
  code    text primary key,
  content jsonb not null
);

-- Every version of every pack.
create view rule_pack_version as
select code, (content ->> 'version')::integer as version, (content ->> 'inForceFrom')::date as in_force_from, content
from built_in_rule_pack
union all
select code, version, in_force_from, content from rule_pack;
