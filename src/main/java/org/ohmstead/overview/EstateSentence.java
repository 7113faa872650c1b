package org.ohmstead.overview;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;

/** "Seven of 212 strings need someone, two by Friday." */
final class EstateSentence {

    private EstateSentence() {}

    /** @param today where the reader is */
    static Sentence of(List<StringTile> tiles, LocalDate today) {
        if (tiles.isEmpty()) {
            return Sentence.empty().plain("No string is in your care yet.");
        }
        List<StringTile> asking = tiles.stream().filter(StringTile::asks).toList();
        String all = Words.counted(tiles.size(), "string");
        if (asking.isEmpty()) {
            return Sentence.empty()
                    .stressed(tiles.size() == 1 ? "The one string" : "All " + all)
                    .plain(" can be left alone today.");
        }
        Sentence sentence = Sentence.empty()
                .stressed(Words.capital(Words.number(asking.size())) + " of " + all)
                .plain(asking.size() == 1 ? " needs someone" : " need someone");
        return deadline(sentence, asking, today);
    }

    private static Sentence deadline(Sentence sentence, List<StringTile> asking, LocalDate today) {
        LocalDate friday = today.with(TemporalAdjusters.next(DayOfWeek.FRIDAY));
        long soon = asking.stream()
                .filter(tile -> tile.dueOn() != null && !tile.dueOn().isAfter(friday))
                .count();
        if (soon == 0) {
            return sentence.plain(", none before the weekend.");
        }
        return sentence.plain(", ").stressed(Words.number(soon) + " by Friday").plain(".");
    }
}
