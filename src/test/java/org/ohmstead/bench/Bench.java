package org.ohmstead.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ohmstead.Application;
import org.ohmstead.access.Access;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;

/** Starts the service on an empty database, loads an estate, and prints what it costs against what it must cost. */
public final class Bench {

    private Bench() {}

    /** How large the estate is. */
    record Scale(int strings, int surveys, int jars) {

        static Scale of(String[] arguments) {
            return new Scale(number(arguments, 0, 1_000), number(arguments, 1, 20), number(arguments, 2, 60));
        }

        private static int number(String[] arguments, int index, int otherwise) {
            return index < arguments.length ? Integer.parseInt(arguments[index]) : otherwise;
        }
    }

    public static void main(String[] arguments) throws IOException {
        Scale scale = Scale.of(arguments);
        Path directory = Files.createTempDirectory("ohmstead-bench");
        try (ConfigurableApplicationContext service = start(directory)) {
            Access access = service.getBean(Access.class);
            Results results = new Results(scale);
            access.asSystem("bench", () -> measure(service, scale, results));
            results.print(System.out);
        } finally {
            FileSystemUtils.deleteRecursively(directory);
        }
    }

    private static void measure(ConfigurableApplicationContext service, Scale scale, Results results) {
        BenchEstate estate = BenchEstate.register(service, scale);
        new IngestBench(service, estate).run(results);
        new AssessmentBench(service).run(results);
        new HttpBench(service, estate).run(results);
    }

    private static ConfigurableApplicationContext start(Path directory) {
        return new SpringApplicationBuilder(Application.class, BenchRoutes.class)
                .run(
                        "--ohmstead.database.directory=" + directory.resolve("database"),
                        "--server.port=0",
                        "--db-scheduler.enabled=false",
                        "--logging.level.root=warn",
                        "--logging.level.org.ohmstead=warn");
    }
}
