package org.ohmstead.fleet;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import org.ohmstead.kernel.Flaw;

/**
 * What a register file does, or would do, to the register.
 *
 * @param unchanged rows that say what the register says already
 * @param changes all other sound rows
 * @param written false for a preview, and when there are flaws
 */
public record ImportReport(String kind, int unchanged, List<RowChange> changes, List<Flaw> flaws, boolean written) {

    /** What a row does. */
    public enum Kind {
        CREATED("created"),
        CHANGED("changed"),
        RETIRED("retired");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** @param cells old and new text by column, of the columns that differ */
    public record RowChange(int line, Kind kind, String key, Map<String, List<String>> cells) {}

    @JsonProperty
    public long created() {
        return count(Kind.CREATED);
    }

    @JsonProperty
    public long changed() {
        return count(Kind.CHANGED);
    }

    @JsonProperty
    public long retired() {
        return count(Kind.RETIRED);
    }

    /** One sentence, such as "3 created, 1 changed, 56 unchanged" or "nothing changes". */
    @JsonProperty
    public String summary() {
        if (!flaws.isEmpty()) {
            return flaws.size() == 1
                    ? "1 thing to mend; nothing was written"
                    : flaws.size() + " things to mend; nothing was written";
        }
        if (changes.isEmpty()) {
            return "nothing changes";
        }
        return created() + " created, " + changed() + " changed, " + retired() + " retired, " + unchanged
                + " unchanged";
    }

    private long count(Kind kind) {
        return changes.stream().filter(change -> change.kind() == kind).count();
    }
}
