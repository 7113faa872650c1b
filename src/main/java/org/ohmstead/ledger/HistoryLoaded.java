package org.ohmstead.ledger;

import java.util.Set;

/** Surveys of these strings were loaded in bulk. Published once a load, before the commit. */
public record HistoryLoaded(Set<Long> stringIds) {}
