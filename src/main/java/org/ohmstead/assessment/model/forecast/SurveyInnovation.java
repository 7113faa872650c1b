package org.ohmstead.assessment.model.forecast;

/**
 * Distance of a survey's centre from what the string's own history made expect, logarithmic.
 *
 * @param value NaN when nothing was read or nothing was known before
 * @param variance expected, without any error shared by the whole survey
 */
public record SurveyInnovation(double value, double variance) {}
