package org.ohmstead.programme;

import java.time.ZoneId;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How the programme is set up.
 *
 * @param at when the next dates of the whole estate are computed anew: seconds, minutes, hours, day of month, month, day
 *     of week
 * @param zone in which that is meant
 */
@ConfigurationProperties("ohmstead.programme")
record ProgrammeSettings(
        @DefaultValue("0 45 1 * * *") String at,
        @DefaultValue("UTC") ZoneId zone) {}
