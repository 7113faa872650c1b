package org.ohmstead.reports;

import java.time.ZoneId;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How subscribed reports are sent. Nothing is sent unless {@code spring.mail.host} names a mail server.
 *
 * @param from the sender's address
 * @param at when it is looked for what is to be sent: seconds, minutes, hours, day of month, month, day of week
 * @param zone in which that is meant, and in which weeks, months and quarters begin
 */
@ConfigurationProperties("ohmstead.reports")
record ReportSettings(
        @DefaultValue("ohmstead@localhost") String from,
        @DefaultValue("0 30 5 * * *") String at,
        @DefaultValue("UTC") ZoneId zone) {}
