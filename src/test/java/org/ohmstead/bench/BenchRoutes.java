package org.ohmstead.bench;

import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.ohmstead.ledger.NewSurvey;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.web.servlet.function.RouterFunction;
import org.springframework.web.servlet.function.RouterFunctions;
import org.springframework.web.servlet.function.ServerResponse;

/**
 * The floors of the HTTP measurements, behind the same server and the same security chain: an empty page, and a request
 * that stores the rows of an upload in one transaction and does nothing else. Never part of the product: it lives among
 * the tests and is only known to the bench.
 */
class BenchRoutes {

    static final ConcurrentMap<String, NewSurvey> SURVEYS = new ConcurrentHashMap<>();

    private static final String RAW_FILE =
            "insert into raw_file (sha256, byte_count, content, stored_at) values (sha256(?), ?, ?, now())";
    private static final String UPLOAD =
            "insert into upload (id, sha256, file_name, received_at, received_by, state, stage,"
                    + " string_id, survey_id)"
                    + " values (?, sha256(?), 'bench', now(), 'bench', 'ACCEPTED', 'CHECKED', ?, nextval('survey_id'))";
    private static final String SURVEY = "insert into survey (string_id, taken_at, taken_on, recorded_at, recorded_by,"
            + " ohmic_kind, ohmic, volts, celsius, link_microohms) values (?, ?, ?, now(), 'bench', ?, ?, ?, ?, ?)";

    @Bean
    RouterFunction<ServerResponse> benchFloors(JdbcTemplate jdbc, TransactionTemplate transaction) {
        return RouterFunctions.route()
                .GET("/bench/empty", request -> ServerResponse.ok().body("<!doctype html><title>Empty</title>"))
                .PUT("/bench/uploads/{id}", request -> {
                    byte[] body = request.body(byte[].class);
                    String id = request.pathVariable("id");
                    transaction.executeWithoutResult(status -> store(jdbc, UUID.fromString(id), body));
                    return ServerResponse.status(201).body("stored");
                })
                .build();
    }

    private static void store(JdbcTemplate jdbc, UUID id, byte[] body) {
        NewSurvey survey = SURVEYS.remove(id.toString());
        jdbc.update(RAW_FILE, body, body.length, body);
        jdbc.update(UPLOAD, id, body, survey.facts().stringId());
        jdbc.update(SURVEY, row -> bind(row, survey));
    }

    private static void bind(PreparedStatement row, NewSurvey survey) throws SQLException {
        row.setLong(1, survey.facts().stringId());
        row.setObject(2, survey.facts().takenAt().atOffset(ZoneOffset.UTC));
        row.setObject(3, survey.facts().takenOn());
        row.setString(4, survey.facts().ohmicKind().name());
        row.setArray(5, reals(row.getConnection(), survey.readings().ohmic()));
        row.setArray(6, reals(row.getConnection(), survey.readings().volts()));
        row.setArray(7, reals(row.getConnection(), survey.readings().celsius()));
        double[] links = Arrays.stream(survey.readings().linkMicroohms())
                .flatMapToDouble(Arrays::stream)
                .toArray();
        row.setArray(8, reals(row.getConnection(), links));
    }

    private static Array reals(Connection connection, double[] values) throws SQLException {
        Object[] boxed = Arrays.stream(values).mapToObj(value -> (float) value).toArray();
        return connection.createArrayOf("float4", boxed);
    }
}
