package org.ohmstead.fleet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.kernel.Flaw;

/** The strings that the asking person reaches, for the rows of a file that belong to them. */
final class StringsInReach {

    private final Map<String, StringView> byTitle;
    private final Map<Long, StringView> byId;

    StringsInReach(List<StringView> strings) {
        byTitle = strings.stream().collect(Collectors.toMap(StringView::title, Function.identity()));
        byId = strings.stream().collect(Collectors.toMap(StringView::id, Function.identity()));
    }

    Long[] ids() {
        return byId.keySet().toArray(Long[]::new);
    }

    StringView of(long id) {
        return Objects.requireNonNull(byId.get(id));
    }

    Optional<StringView> named(String site, String name) {
        return Optional.ofNullable(byTitle.get(site + " / " + name));
    }

    static Flaw missing(int line, Sheet<?> sheet, String site, String name) {
        return new Flaw(
                line,
                sheet.columnNumber("string"),
                name,
                "There is no string " + site + " / " + name + " in your reach.",
                "Bring in the string first, or mend site and string.");
    }

    /** One audit entry for each string: how much was new, and what was changed from what to what. */
    static <E> void writeDown(Keeping keeping, Sheet<E> sheet, Map<StringView, ? extends List<Wish<E>>> wishes) {
        wishes.forEach((string, itsWishes) -> {
            Map<String, Object> detail = new LinkedHashMap<>();
            detail.put("created", count(itsWishes, wish -> wish.before() == null));
            Map<String, Object> changed = new LinkedHashMap<>();
            for (Wish<E> wish : itsWishes) {
                E before = wish.before();
                if (before != null) {
                    changed.put(sheet.keyOf(before), Sound.changes(sheet, before, wish.after()));
                }
            }
            detail.put("changed", changed);
            keeping.done(sheet.name() + " brought in from a file", string, detail);
        });
    }

    private static <E> long count(List<Wish<E>> wishes, Predicate<Wish<E>> which) {
        return wishes.stream().filter(which).count();
    }

    static <E> void gather(Map<StringView, List<Wish<E>>> wishes, @Nullable StringView string, Wish<E> wish) {
        if (string != null) {
            wishes.computeIfAbsent(string, any -> new ArrayList<>()).add(wish);
        }
    }
}
