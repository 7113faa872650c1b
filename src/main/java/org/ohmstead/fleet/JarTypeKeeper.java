package org.ohmstead.fleet;

import java.util.stream.Collectors;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Component;

/** Keeps jar types, which all areas share. */
@Component
class JarTypeKeeper {

    private final JarTypes jarTypes;
    private final BatteryStrings strings;
    private final Access access;
    private final Keeping keeping;

    JarTypeKeeper(JarTypes jarTypes, BatteryStrings strings, Access access, Keeping keeping) {
        this.jarTypes = jarTypes;
        this.strings = strings;
        this.access = access;
        this.keeping = keeping;
    }

    JarTypeView create(JarTypeEntry wished) {
        access.require(Permission.EDIT_REGISTER);
        JarTypeEntry entry = Sound.entry(Sheets.JAR_TYPES, wished);
        requireFree(entry.code());
        JarType jarType = Stored.orConflict(() -> jarTypes.saveAndFlush(new JarType(entry)));
        keeping.created(Sheets.JAR_TYPES, entry, null);
        return jarType.view();
    }

    JarTypeView change(JarType jarType, JarTypeEntry wished) {
        access.require(Permission.EDIT_REGISTER);
        JarTypeEntry before = jarType.view().entry();
        JarTypeEntry entry = Sound.entry(Sheets.JAR_TYPES, wished);
        if (!entry.code().equals(before.code())) {
            requireFree(entry.code());
        }
        jarType.become(entry);
        Stored.orConflict(jarTypes::flush);
        keeping.changed(Sheets.JAR_TYPES, before, entry, null);
        strings.idsByJarType(jarType.id()).forEach(keeping::announce);
        return jarType.view();
    }

    /**
     * @param sheet the sheet that names it, for the place of the refusal
     * @throws Refused naming the jar types there are
     */
    JarType named(Sheet<?> sheet, String code) {
        return jarTypes.findByCode(code)
                .orElseThrow(() -> Sound.refusal(
                        sheet,
                        "jar_type",
                        code,
                        "There is no jar type " + code + ".",
                        "Add it to the library first. Jar types are: " + choices() + "."));
    }

    private String choices() {
        String codes = jarTypes.findAllByOrderByCode().stream()
                .filter(type -> !type.isRetired())
                .map(JarType::code)
                .collect(Collectors.joining(", "));
        return codes.isEmpty() ? "none yet" : codes;
    }

    private void requireFree(String code) {
        if (jarTypes.findByCode(code).isPresent()) {
            throw new Conflict("There is already a jar type " + code + ". Choose another code, or change that one.");
        }
    }
}
