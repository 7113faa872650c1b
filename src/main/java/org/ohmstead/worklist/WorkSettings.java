package org.ohmstead.worklist;

import java.time.ZoneId;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How the work list is set up.
 *
 * @param at when it is held against the whole estate: seconds, minutes, hours, day of month, month, day of week
 * @param zone in which that is meant
 */
@ConfigurationProperties("ohmstead.worklist")
record WorkSettings(
        @DefaultValue("0 5 3 * * *") String at,
        @DefaultValue("UTC") ZoneId zone) {}
