package org.ohmstead.assessment.model.estate;

/**
 * What a capacity test found of a jar, beside what its last reading before had shown.
 *
 * @param logRise logarithmic rise over its own baseline: 0.18 is about 20 %
 * @param failed whether it had lost its capacity
 */
public record TestedJar(double logRise, boolean failed) {}
