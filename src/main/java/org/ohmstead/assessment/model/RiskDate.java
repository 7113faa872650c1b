package org.ohmstead.assessment.model;

import java.time.LocalDate;

/**
 * By when the forecast wants another survey.
 *
 * @param reason with the jar or link that adds most to the risk
 */
public record RiskDate(LocalDate on, String reason) {}
