package org.ohmstead;

import java.time.Clock;
import java.util.List;
import org.ohmstead.replay.ReplayCommand;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;

/** Starts the service, and owns the one clock that everything else reads. */
@SpringBootApplication
public class Application {

    /** With {@code replay FOLDER OUT.csv} replays an estate in files and ends; otherwise starts the service. */
    public static void main(String[] args) {
        if (args.length > 0 && args[0].equals("replay")) {
            System.exit(ReplayCommand.run(List.of(args).subList(1, args.length), System.err));
        }
        SpringApplication.run(Application.class, args);
    }

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }
}
