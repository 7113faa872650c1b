package org.ohmstead.database;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says at the console why there is no database and what to do, instead of a stack trace. */
final class DatabaseNotStartedAnalyzer extends AbstractFailureAnalyzer<DatabaseNotStarted> {

    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, DatabaseNotStarted cause) {
        return new FailureAnalysis(cause.getMessage(), cause.remedy(), rootFailure);
    }
}
