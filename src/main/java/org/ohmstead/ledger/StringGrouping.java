package org.ohmstead.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Gathers surveys that arrive in order of their strings, and hands on a string once it is complete. */
final class StringGrouping {

    private final Consumer<StringSurveys> consumer;
    private List<SurveyRecord> gathered = new ArrayList<>();

    StringGrouping(Consumer<StringSurveys> consumer) {
        this.consumer = consumer;
    }

    void add(SurveyRecord survey) {
        if (!gathered.isEmpty() && stringId() != survey.facts().stringId()) {
            finish();
        }
        gathered.add(survey);
    }

    void finish() {
        if (!gathered.isEmpty()) {
            consumer.accept(new StringSurveys(stringId(), gathered));
            gathered = new ArrayList<>();
        }
    }

    private long stringId() {
        return gathered.get(0).facts().stringId();
    }
}
