package org.ohmstead.overview;

import java.util.List;

/** "Two of the three strings at Harrow Fell need someone." */
final class SiteSentence {

    private SiteSentence() {}

    static Sentence of(String site, List<StringTile> strings) {
        Sentence start = Sentence.empty().stressed(site);
        long asking = strings.stream().filter(StringTile::asks).count();
        if (strings.isEmpty()) {
            return start.plain(" has no string in service");
        }
        if (asking == 0) {
            return start.plain(" can be left alone today");
        }
        String of = strings.size() == 1
                ? "its one string"
                : Words.number(asking) + " of " + Words.number(strings.size()) + " strings";
        return start.plain(" needs someone: ").stressed(of);
    }
}
