package org.ohmstead.programme.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Technology;

/**
 * A set of requirements from one source, in one version.
 *
 * @param version 1, 2, ... of the same code
 * @param inForceFrom from when this version counts
 * @param technologies what it is meant for; empty for any
 * @param source what it is taken from
 * @param note what its user must know
 */
public record RulePack(
        String code,
        int version,
        String title,
        LocalDate inForceFrom,
        Set<Technology> technologies,
        String source,
        String note,
        List<Requirement> requirements) {

    public RulePack {
        technologies = Set.copyOf(technologies);
        requirements = List.copyOf(requirements);
        Requirement.requireDistinct(requirements);
    }

    public boolean suits(Technology technology) {
        return technologies.isEmpty() || technologies.contains(technology);
    }

    public Optional<Requirement> find(String code) {
        return requirements.stream()
                .filter(requirement -> requirement.code().equals(code))
                .findFirst();
    }

    /** A copy to be made one's own. */
    public RulePack as(String code, String title, LocalDate inForceFrom) {
        return new RulePack(code, 1, title, inForceFrom, technologies, source, note, requirements);
    }

    /**
     * The same with the owner's shorter interval for every periodic branch of a requirement that it shortens.
     *
     * @param months null for none of their own
     * @throws IllegalArgumentException when it shortens none of them
     */
    public RulePack withOwnMonths(String requirement, @Nullable Integer months) {
        List<Requirement> changed = requirements.stream()
                .map(one -> one.code().equals(requirement) ? one.withOwnMonths(months) : one)
                .toList();
        return new RulePack(code, version, title, inForceFrom, technologies, source, note, changed);
    }

    public boolean isEmpty() {
        return requirements.isEmpty();
    }
}
