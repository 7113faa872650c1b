package org.ohmstead.overview;

import java.util.ArrayList;
import java.util.List;
import org.ohmstead.kernel.Urgency;

/** "String B asks you to act on jar 17 and link 9|10." */
final class StringSentence {

    private static final int NAMED = 4;

    private StringSentence() {}

    static Sentence of(String name, Urgency urgency, List<JarLine> jars, List<LinkLine> links) {
        Sentence start = Sentence.empty().stressed("String " + name);
        List<String> subjects = subjects(urgency, jars, links);
        return switch (urgency) {
            case CLEAR -> start.plain(" asks nothing of you");
            case RECHECK ->
                start.plain(
                        subjects.isEmpty()
                                ? " asks for another reading"
                                : " asks for another reading of " + Words.list(subjects, NAMED));
            case PLAN ->
                start.plain(" asks you to plan" + (subjects.isEmpty() ? "" : " for " + Words.list(subjects, NAMED)));
            case ACT ->
                start.plain(" asks you to act" + (subjects.isEmpty() ? "" : " on " + Words.list(subjects, NAMED)));
        };
    }

    private static List<String> subjects(Urgency urgency, List<JarLine> jars, List<LinkLine> links) {
        List<String> subjects = new ArrayList<>();
        jars.stream().filter(jar -> jar.urgency() == urgency).forEach(jar -> subjects.add("jar " + jar.position()));
        links.stream()
                .filter(link -> link.urgency() == urgency)
                .forEach(link -> subjects.add(link.title().startsWith("link") ? link.title() : "the " + link.title()));
        return subjects;
    }
}
