package org.ohmstead.worklist.model;

/** What happened to an item, and the item after that. */
public record Step(WorkItem after, WorkEvent event) {}
