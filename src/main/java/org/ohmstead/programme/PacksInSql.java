package org.ohmstead.programme;

import java.util.List;
import org.ohmstead.programme.rules.RulePack;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;
import tools.jackson.databind.json.JsonMapper;

/** Lays the packs that come with the program beside the owners' own at every start, for whoever asks in SQL. */
@Component
class PacksInSql implements SmartInitializingSingleton {

    private static final String WRITE = """
            insert into built_in_rule_pack (code, content) values (?, ?::jsonb)
            on conflict (code) do update set content = excluded.content""";

    private final PackShelf shelf;
    private final JdbcTemplate jdbc;
    private final JsonMapper json;
    private final TransactionTemplate transaction;

    PacksInSql(PackShelf shelf, JdbcTemplate jdbc, JsonMapper json, TransactionTemplate transaction) {
        this.shelf = shelf;
        this.jdbc = jdbc;
        this.json = json;
        this.transaction = transaction;
    }

    @Override
    public void afterSingletonsInstantiated() {
        List<RulePack> packs = shelf.builtIn();
        transaction.executeWithoutResult(status -> {
            jdbc.update("delete from built_in_rule_pack where code <> all (?)", (Object)
                    packs.stream().map(RulePack::code).toArray(String[]::new));
            jdbc.batchUpdate(
                    WRITE,
                    packs.stream()
                            .map(pack -> new Object[] {pack.code(), json.writeValueAsString(pack)})
                            .toList());
        });
    }
}
