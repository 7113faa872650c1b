package org.ohmstead.intake.history;

/**
 * The answer to a history that is sent.
 *
 * @param isNew false when these very bytes came before
 */
public record HistoryReceipt(HistoryView load, boolean isNew) {}
