package org.ohmstead.programme;

import java.util.List;

/**
 * The duties of these strings were worked out as of their sites' today: on every news and every night. Published before the
 * commit. Retired strings are left out.
 */
public record DutiesReckoned(List<StringDuties> strings) {

    public DutiesReckoned {
        strings = List.copyOf(strings);
    }
}
