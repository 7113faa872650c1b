package org.ohmstead.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmstead.Application;
import org.ohmstead.access.Access;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;

/** Starts the service on an empty database, loads an estate, and prints what it costs against what it must cost. */
public final class Bench {

    private Bench() {}

    /** The measurements in their order; naming some leaves the others out. */
    enum Part {
        INGEST,
        ASSESSMENT,
        UPLOAD,
        PAGES
    }

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
            access.asSystem("bench", () -> measure(service, scale, results, parts(arguments)));
            results.print(System.out);
        } finally {
            FileSystemUtils.deleteRecursively(directory);
        }
    }

    private static Set<Part> parts(String[] arguments) {
        return arguments.length < 4
                ? EnumSet.allOf(Part.class)
                : Arrays.stream(arguments[3].toUpperCase(Locale.ROOT).split(","))
                        .map(Part::valueOf)
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Part.class)));
    }

    private static void measure(ConfigurableApplicationContext service, Scale scale, Results results, Set<Part> parts) {
        BenchEstate estate = BenchEstate.register(service, scale);
        IngestBench ingest = new IngestBench(service, estate);
        if (parts.contains(Part.INGEST)) {
            ingest.run(results);
        } else {
            ingest.loadAll();
        }
        AssessmentBench assessment = new AssessmentBench(service, estate, scale.surveys());
        if (parts.contains(Part.ASSESSMENT)) {
            assessment.run(results);
            new AdvanceBench(estate.strings().get(0), scale.surveys()).run(results);
        } else {
            assessment.assess();
        }
        HttpBench http = new HttpBench(service, estate);
        if (parts.contains(Part.UPLOAD)) {
            http.uploads(results);
        }
        if (parts.contains(Part.PAGES)) {
            http.pages(results);
        }
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
