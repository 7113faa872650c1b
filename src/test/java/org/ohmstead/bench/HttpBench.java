package org.ohmstead.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.ohmstead.access.ApiTokens;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.demo.SheetText;
import org.ohmstead.fleet.StringView;
import org.ohmstead.ledger.NewSurvey;
import org.springframework.context.ApplicationContext;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.JdbcTemplate;

/** Requests through the whole stack, one client after the other, with a personal token. */
final class HttpBench {

    private static final int REQUESTS = 200;
    private static final LocalDate AFTER_HISTORY = LocalDate.of(2017, 3, 1);
    private static final int CREATED = 201;
    private static final int OK = 200;

    private final HttpClient client = HttpClient.newHttpClient();
    private final ApplicationContext service;
    private final BenchEstate estate;
    private final String address;
    private final String token;

    HttpBench(ApplicationContext service, BenchEstate estate) {
        this.service = service;
        this.estate = estate;
        this.address =
                "http://localhost:" + service.getBean(Environment.class).getRequiredProperty("local.server.port");
        People people = service.getBean(People.class);
        people.open(new NewPerson("bench", "Bench", Role.ENGINEER, Reach.EVERYWHERE));
        Person person = people.findEnabled("bench").orElseThrow();
        this.token = service.getBean(ApiTokens.class).create(person, "bench");
    }

    void uploads(Results results) {
        AtomicInteger count = new AtomicInteger();
        double floor = Stopwatch.p95(REQUESTS, () -> uploadBare(count.getAndIncrement()));
        double product = Stopwatch.p95(REQUESTS, () -> upload(count.getAndIncrement()));
        results.times(
                "survey uploaded and answered with its assessment, p95",
                "its rows stored in one transaction by the same HTTP stack, p95",
                product,
                floor,
                "≤ 5 ×");
    }

    private void upload(int number) throws IOException, InterruptedException {
        StringView string = string(number);
        byte[] sheet = sheet(string, survey(string, number));
        put("/api/uploads/" + UUID.randomUUID() + "?name=bench.csv", sheet);
    }

    private void uploadBare(int number) throws IOException, InterruptedException {
        StringView string = string(number);
        NewSurvey survey = survey(string, number);
        String id = UUID.randomUUID().toString();
        BenchRoutes.SURVEYS.put(id, survey);
        put("/bench/uploads/" + id, sheet(string, survey));
    }

    void pages(Results results) {
        JdbcTemplate jdbc = service.getBean(JdbcTemplate.class);
        double empty = Stopwatch.p95(REQUESTS, () -> get("/bench/empty"));
        AtomicInteger count = new AtomicInteger();
        double stringSql = Stopwatch.p95(
                REQUESTS,
                () -> PageSql.string(jdbc, string(count.getAndIncrement() * 7).id()));
        double stringPage = Stopwatch.p95(
                REQUESTS,
                () -> get("/strings/" + string(count.getAndIncrement() * 7).id()));
        results.times("string page, p95", "empty page + its bare SQL, p95", stringPage, empty + stringSql, "≤ 3 ×");
        double estateSql = Stopwatch.p95(REQUESTS, () -> PageSql.estate(jdbc));
        double estatePage = Stopwatch.p95(REQUESTS, () -> get("/"));
        results.times("estate page, p95", "empty page + its bare SQL, p95", estatePage, empty + estateSql, "≤ 3 ×");
    }

    private StringView string(int number) {
        List<StringView> strings = estate.strings();
        return strings.get(number % strings.size());
    }

    private static NewSurvey survey(StringView string, int number) {
        return BenchSurveys.survey(string, AFTER_HISTORY.plusDays(number), 1_000 + number);
    }

    private static byte[] sheet(StringView string, NewSurvey survey) {
        var siteTime = survey.facts().takenAt().atZone(BenchEstate.ZONE).toLocalDateTime();
        return SheetText.of(survey, string.siteCode(), string.name(), siteTime).getBytes(StandardCharsets.UTF_8);
    }

    private void put(String path, byte[] body) throws IOException, InterruptedException {
        send(request(path).PUT(HttpRequest.BodyPublishers.ofByteArray(body)).build(), CREATED);
    }

    private void get(String path) throws IOException, InterruptedException {
        send(request(path).GET().build(), OK);
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path)).header("Authorization", "Bearer " + token);
    }

    private void send(HttpRequest request, int expected) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != expected) {
            throw new IOException(request.uri() + " was answered with " + answer.statusCode() + ": " + answer.body());
        }
    }
}
