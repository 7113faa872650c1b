package org.ohmstead.onsite;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A link on the way. All resistances from post to post, straps in parallel, cable included.
 *
 * @param name "link 16|17", "positive terminal link"
 * @param between which posts, in words
 * @param straps how many readings it takes
 * @param lastMicroohms last reading of each strap since the joint was made; empty when there is none
 * @param combinedMicroohms the same straps in parallel
 * @param baselineMicroohms what the joint was first read at since it was made
 * @param overBaselineMicroohms above this it is over its baseline; null without a baseline
 * @param kindMicroohms average of its kind in the last survey
 * @param overKindMicroohms above this it is over the average of its kind; null when the average is not known
 * @param asks what the last judgement asks of it, in words; null when nothing
 */
public record LinkPlace(
        int ordinal,
        String name,
        String between,
        String kind,
        int straps,
        @Nullable LocalDate readOn,
        List<@Nullable Double> lastMicroohms,
        @Nullable Double combinedMicroohms,
        @Nullable Double baselineMicroohms,
        @Nullable Double overBaselineMicroohms,
        @Nullable Double kindMicroohms,
        @Nullable Double overKindMicroohms,
        @Nullable String asks) {}
