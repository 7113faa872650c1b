package org.ohmstead.programme;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.programme.rules.RulePack;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** The rule packs: those that come with the program, and the owners' own. */
@Component
class PackShelf {

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final Clock clock;
    private final List<RulePack> builtIn;

    PackShelf(JdbcClient jdbc, JsonMapper json, Clock clock) throws IOException {
        this.jdbc = jdbc;
        this.json = json;
        this.clock = clock;
        this.builtIn = builtIn(json);
    }

    private static List<RulePack> builtIn(JsonMapper json) throws IOException {
        Resource[] files = new PathMatchingResourcePatternResolver().getResources("classpath*:/programme/*.json");
        List<RulePack> packs = new ArrayList<>();
        for (Resource file : files) {
            try (InputStream content = file.getInputStream()) {
                packs.add(json.readValue(content, RulePack.class));
            }
        }
        packs.sort(Comparator.comparing(RulePack::code));
        return List.copyOf(packs);
    }

    /** By code. */
    List<RulePack> builtIn() {
        return builtIn;
    }

    boolean isBuiltIn(String code) {
        return builtIn.stream().anyMatch(pack -> pack.code().equals(code));
    }

    /** All versions as of now, to be asked many times. */
    Versions versions() {
        List<RulePack> all = new ArrayList<>(builtIn);
        jdbc.sql("select content::text from rule_pack order by code, version")
                .query(String.class)
                .list()
                .forEach(content -> all.add(json.readValue(content, RulePack.class)));
        return new Versions(all);
    }

    void add(RulePack pack, String by) {
        jdbc.sql("""
                        insert into rule_pack (code, version, in_force_from, content, made_at, made_by)
                        values (?, ?, ?, ?::jsonb, ?, ?)""")
                .params(Arrays.asList(
                        pack.code(),
                        pack.version(),
                        pack.inForceFrom(),
                        json.writeValueAsString(pack),
                        java.sql.Timestamp.from(clock.instant()),
                        by))
                .update();
    }

    /** Every version of every pack. */
    static final class Versions {

        static final Versions NONE = new Versions(List.of());

        private final Map<String, List<RulePack>> byCode = new TreeMap<>();

        private Versions(List<RulePack> all) {
            all.forEach(pack -> byCode.computeIfAbsent(pack.code(), code -> new ArrayList<>())
                    .add(pack));
        }

        /**
         * The latest version that was in force on that day; on days before any, the first.
         *
         * @throws NotFound when there is no pack of that code
         */
        RulePack inForce(String code, LocalDate day) {
            List<RulePack> versions = all(code);
            RulePack inForce = versions.get(0);
            for (RulePack version : versions) {
                inForce = version.inForceFrom().isAfter(day) ? inForce : version;
            }
            return inForce;
        }

        /** Oldest first. */
        List<RulePack> all(String code) {
            List<RulePack> versions = byCode.get(code);
            if (versions == null) {
                throw NotFound.of("rule pack", code);
            }
            return versions;
        }

        boolean knows(String code) {
            return byCode.containsKey(code);
        }

        List<String> codes() {
            return List.copyOf(byCode.keySet());
        }
    }
}
