package org.ohmstead.reports;

import org.springframework.stereotype.Component;

/** The compliance summary among the other reports. */
@Component
class ComplianceMaker implements ReportMaker {

    private final Compliance compliance;

    ComplianceMaker(Compliance compliance) {
        this.compliance = compliance;
    }

    @Override
    public ReportKind kind() {
        return ReportKind.COMPLIANCE;
    }

    @Override
    public MadeReport make(ReportWish wish) {
        Quarter quarter = wish.quarter() == null ? compliance.latestFinished() : Quarter.parse(wish.quarter());
        ComplianceSummary summary = compliance.summary(quarter, wish.area());
        return new MadeReport(compliance.report(summary), compliance.printed(summary), "Lines", summary.fileName());
    }
}
