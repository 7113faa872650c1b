package org.ohmstead.overview;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A headline: plain words, some of them stressed. */
public record Sentence(List<Phrase> phrases) {

    /** Words that belong together, with the blank or mark that follows them. */
    public record Phrase(String words, boolean stressed) {}

    public Sentence {
        phrases = List.copyOf(phrases);
    }

    public static Sentence empty() {
        return new Sentence(List.of());
    }

    public Sentence plain(String words) {
        return with(words, false);
    }

    public Sentence stressed(String words) {
        return with(words, true);
    }

    private Sentence with(String words, boolean stressed) {
        List<Phrase> more = new ArrayList<>(phrases);
        more.add(new Phrase(words, stressed));
        return new Sentence(more);
    }

    @JsonValue
    public String text() {
        return phrases.stream().map(Phrase::words).collect(Collectors.joining());
    }
}
