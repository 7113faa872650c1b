package org.ohmstead.worklist.model;

import org.ohmstead.kernel.Urgency;

/**
 * A person's urgency in place of the judgement's.
 *
 * @param words who says so, until when and why
 */
public record Overruled(Subject subject, Urgency urgency, String words) {}
