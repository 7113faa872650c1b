package org.ohmstead.fleet;

import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Conflict;
import org.postgresql.util.PSQLException;
import org.postgresql.util.ServerErrorMessage;
import org.springframework.core.NestedExceptionUtils;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.OptimisticLockingFailureException;

/** Turns a refusal of the database into a sentence; reached only when somebody else was faster than our own checks. */
final class Stored {

    private static final Map<String, String> SENTENCES = Map.of(
            "area_code_key", "There is already an area of that code.",
            "site_code_key", "There is already a site of that code.",
            "jar_type_code_key", "There is already a jar type of that code.",
            "battery_string_site_id_name_key", "The site already has a string of that name.",
            "one_jar_per_position", "Two jars would sit at one position at the same time.",
            "one_place_per_serial", "One jar would sit at two places at the same time.",
            "one_remake_per_day", "This link already has a remake on that day.");

    private Stored() {}

    static <T> T orConflict(Supplier<T> write) {
        try {
            return write.get();
        } catch (DataIntegrityViolationException e) {
            throw new Conflict(sentence(constraint(e)), e);
        } catch (OptimisticLockingFailureException e) {
            throw changedMeanwhile();
        }
    }

    static void orConflict(Runnable write) {
        orConflict(() -> {
            write.run();
            return true;
        });
    }

    static Conflict changedMeanwhile() {
        return new Conflict("Somebody else changed this since you opened it. Open it again and repeat your change.");
    }

    private static String sentence(@Nullable String constraint) {
        String known = constraint == null ? null : SENTENCES.get(constraint);
        return known == null ? "The register can't hold this: it breaks the rule " + constraint + "." : known;
    }

    private static @Nullable String constraint(DataIntegrityViolationException refusal) {
        Throwable root = NestedExceptionUtils.getMostSpecificCause(refusal);
        ServerErrorMessage message = root instanceof PSQLException sql ? sql.getServerErrorMessage() : null;
        return message == null ? null : message.getConstraint();
    }
}
