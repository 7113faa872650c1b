package org.ohmstead.web;

import org.ohmstead.access.FirstStart;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.server.context.WebServerInitializedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Component;

/** Says on the console where to click. */
@Component
class Announcement {

    private static final Logger LOG = LoggerFactory.getLogger(Announcement.class);

    private final FirstStart firstStart;
    private final Environment environment;
    private volatile int port;

    Announcement(FirstStart firstStart, Environment environment) {
        this.firstStart = firstStart;
        this.environment = environment;
    }

    @EventListener
    void listening(WebServerInitializedEvent event) {
        if (event.getApplicationContext().getServerNamespace() == null) {
            port = event.getWebServer().getPort();
        }
    }

    @EventListener
    void ready(ApplicationReadyEvent event) {
        if (port == 0) {
            return;
        }
        String address = "http://localhost:" + port;
        LOG.info("Ohmstead is ready: {}", address);
        if (environment.acceptsProfiles(Profiles.of("demo"))) {
            LOG.info("This is the demonstration estate; the sign-in page shows its names and passwords.");
        } else {
            firstStart
                    .secret()
                    .ifPresent(secret -> LOG.info(
                            "Nobody can sign in yet. Choose the administrator's password within a day: {}/welcome/{}",
                            address,
                            secret));
        }
    }
}
