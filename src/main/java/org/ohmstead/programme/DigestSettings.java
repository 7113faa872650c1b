package org.ohmstead.programme;

import java.time.ZoneId;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How the digest by e-mail is sent. Nothing is sent unless {@code spring.mail.host} names a mail server.
 *
 * @param from the sender's address
 * @param at when: seconds, minutes, hours, day of month, month, day of week
 * @param zone in which that is meant
 * @param daysAhead how far ahead what is due is named
 */
@ConfigurationProperties("ohmstead.digest")
record DigestSettings(
        @DefaultValue("ohmstead@localhost") String from,
        @DefaultValue("0 0 6 * * MON") String at,
        @DefaultValue("UTC") ZoneId zone,
        @DefaultValue("30") int daysAhead) {}
