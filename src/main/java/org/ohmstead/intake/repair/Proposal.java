package org.ohmstead.intake.repair;

import org.ohmstead.intake.check.RemarkCode;

/** A repair that a remark asks for. */
public record Proposal(RemarkCode because, Step step) {}
