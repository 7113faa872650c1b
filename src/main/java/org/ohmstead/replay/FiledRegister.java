package org.ohmstead.replay;

import java.io.IOException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.LinkRemake;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.fleet.csv.LinkEntry;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.fleet.csv.RemakeEntry;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.fleet.csv.SiteEntry;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.DateRange;
import org.ohmstead.kernel.Flaw;

/** The strings that the register's files describe, by site and name. */
final class FiledRegister {
    private final ReplayFolder folder;
    private final Notes notes;
    private final Map<String, FiledString> strings = new LinkedHashMap<>();

    private FiledRegister(ReplayFolder folder, Notes notes) {
        this.folder = folder;
        this.notes = notes;
    }

    static FiledRegister read(ReplayFolder folder, Notes notes) throws IOException {
        FiledRegister register = new FiledRegister(folder, notes);
        register.readStrings();
        if (!register.strings.isEmpty()) {
            register.readOccupancies();
            register.readRemakes();
        }
        return register;
    }

    List<FiledString> strings() {
        return List.copyOf(strings.values());
    }

    /** Null when no file describes it. */
    @Nullable
    FiledString find(String site, String name) {
        return strings.get(key(site, name));
    }

    private static String key(String site, String name) {
        return site + " / " + name;
    }

    private void readStrings() throws IOException {
        Map<String, RegisterFile.Row<SiteEntry>> sites = RegisterFile.read(Sheets.SITES, folder, notes);
        Map<String, RegisterFile.Row<JarTypeEntry>> types = RegisterFile.read(Sheets.JAR_TYPES, folder, notes);
        Map<String, Map<Integer, LinkEntry>> links = links();
        for (RegisterFile.Row<StringEntry> row :
                RegisterFile.read(Sheets.STRINGS, folder, notes).values()) {
            StringEntry string = row.entry();
            RegisterFile.Row<SiteEntry> site = sites.get(string.site());
            RegisterFile.Row<JarTypeEntry> type = types.get(string.jarType());
            if (site == null) {
                notes.say(row.file() + ", line " + row.line() + ": no sites.csv describes the site " + string.site()
                        + "; its dates are read as UTC.");
            }
            if (type == null) {
                notes.skip(row.file(), unknownType(row));
                continue;
            }
            String key = key(string.site(), string.name());
            ZoneId zone = site == null ? ZoneOffset.UTC : site.entry().timeZone();
            strings.put(
                    key,
                    new FiledString(
                            string.site(),
                            string.name(),
                            zone,
                            StringPlans.plan(
                                    strings.size() + 1L, string, type.entry(), links.getOrDefault(key, Map.of()))));
        }
    }

    private static Flaw unknownType(RegisterFile.Row<StringEntry> row) {
        return Flaw.ofLine(
                row.line(),
                "No jar-types.csv describes the jar type " + row.entry().jarType() + " of this string.",
                "Add the jar type's row.");
    }

    private Map<String, Map<Integer, LinkEntry>> links() throws IOException {
        Map<String, Map<Integer, LinkEntry>> links = new HashMap<>();
        for (RegisterFile.Row<LinkEntry> row :
                RegisterFile.read(Sheets.LINKS, folder, notes).values()) {
            LinkEntry link = row.entry();
            links.computeIfAbsent(key(link.site(), link.string()), string -> new HashMap<>())
                    .put(link.ordinal(), link);
        }
        return links;
    }

    private void readOccupancies() throws IOException {
        for (RegisterFile.Row<OccupancyEntry> row :
                RegisterFile.read(Sheets.OCCUPANCIES, folder, notes).values()) {
            OccupancyEntry jar = row.entry();
            FiledString string = find(jar.site(), jar.string());
            if (string == null) {
                notes.skip(row.file(), unknownString(row.line(), jar.site(), jar.string()));
            } else if (jar.until() != null && !jar.until().isAfter(jar.from())) {
                notes.skip(
                        row.file(), Flaw.ofLine(row.line(), "The jar left before it came.", "Correct from or until."));
            } else {
                double baseline = jar.baselineOhmic() == null ? Double.NaN : jar.baselineOhmic();
                DateRange during = new DateRange(jar.from(), jar.until());
                string.spells.add(new JarSpell(jar.position(), jar.serial(), during, baseline));
            }
        }
    }

    private void readRemakes() throws IOException {
        for (RegisterFile.Row<RemakeEntry> row :
                RegisterFile.read(Sheets.REMAKES, folder, notes).values()) {
            RemakeEntry remake = row.entry();
            FiledString string = find(remake.site(), remake.string());
            if (string == null) {
                notes.skip(row.file(), unknownString(row.line(), remake.site(), remake.string()));
            } else {
                string.remakes.add(new LinkRemake(remake.ordinal(), remake.remadeOn()));
            }
        }
    }

    static Flaw unknownString(int line, String site, String name) {
        return Flaw.ofLine(
                line,
                "No strings.csv describes the string \"" + name + "\" of the site \"" + site + "\".",
                "Correct the name, or add the string's row.");
    }
}
