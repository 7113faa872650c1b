package org.ohmstead.reports;

/** Makes one kind of report for whoever is signed in, out of what that person may see. */
interface ReportMaker {

    ReportKind kind();

    MadeReport make(ReportWish wish);
}
