package org.ohmstead.fleet.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A form about one register entry.
 *
 * @param problem what is wrong with the entry as a whole
 */
record EntryForm(List<Group> groups, @Nullable String problem) {

    record Group(String title, List<Field> fields) {}

    public boolean isFlawed() {
        return problem != null
                || groups.stream().flatMap(group -> group.fields().stream()).anyMatch(field -> field.message() != null);
    }
}
