package org.ohmstead.worklist.model;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** All the work that is asked for at one string, and what would be asked for had nobody excused it. */
public final class Wants {

    private final Map<WorkKey, Want> asked = new LinkedHashMap<>();
    private final Map<WorkKey, String> excused = new LinkedHashMap<>();

    /** Joined with what asks for the same work already. */
    public void add(Want want) {
        asked.merge(want.key(), want, Want::with);
    }

    public void addAll(Wants others) {
        others.asked().forEach(this::add);
        others.excused.forEach(excused::putIfAbsent);
    }

    /** @param words who excused it, until when and why */
    public void excuse(WorkKey key, String words) {
        excused.put(key, words);
    }

    void change(Predicate<Want> which, UnaryOperator<Want> how) {
        asked.replaceAll((key, want) -> which.test(want) ? how.apply(want) : want);
    }

    void remove(WorkKey key) {
        asked.remove(key);
    }

    public Collection<Want> asked() {
        return List.copyOf(asked.values());
    }

    public @Nullable Want of(WorkKey key) {
        return asked.get(key);
    }

    /** Why that work is not asked for although it would be; null when it is asked for, or nobody excused it. */
    public @Nullable String excuse(WorkKey key) {
        return asked.containsKey(key) ? null : excused.get(key);
    }
}
