package org.ohmstead.capacity.web;

import java.io.IOException;
import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.capacity.Agreement;
import org.ohmstead.capacity.Agreements;
import org.ohmstead.capacity.CapacityStanding;
import org.ohmstead.capacity.CapacityTestView;
import org.ohmstead.capacity.CapacityTests;
import org.ohmstead.capacity.Drawn;
import org.ohmstead.capacity.NewCapacityTest;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.Ratings;
import org.ohmstead.capacity.model.TestKind;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RequestPart;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/** Capacity tests for programs: typed as JSON, or a JSON part {@code test} with the recorder's file as {@code file}. */
@RestController
class CapacityResource {

    private final CapacityTests tests;
    private final Agreements agreements;
    private final Access access;

    CapacityResource(CapacityTests tests, Agreements agreements, Access access) {
        this.tests = tests;
        this.agreements = agreements;
        this.access = access;
    }

    /** @param discharge left out when a record is attached */
    record Body(
            LocalDate testedOn,
            String testedBy,
            TestKind kind,
            Method method,
            Ratings ratings,
            double celsius,
            @Nullable Double linearCoefficient,
            @Nullable String note,
            @Nullable Typed discharge) {

        NewCapacityTest test(long stringId) {
            String said = note == null ? "" : note;
            return new NewCapacityTest(
                    stringId, testedOn, testedBy, kind, method, ratings, celsius, linearCoefficient, said);
        }
    }

    /** @param jarEndVolts per position, null where not read; may be left out */
    record Typed(
            double amps,
            double minutes,
            boolean stoppedEarly,
            @Nullable Double stringEndVolts,
            @Nullable List<@Nullable Double> jarEndVolts) {

        Drawn drawn() {
            double[] volts = jarEndVolts == null
                    ? new double[0]
                    : jarEndVolts.stream()
                            .mapToDouble(one -> one == null ? Double.NaN : one)
                            .toArray();
            return new Drawn(amps, minutes, stoppedEarly, stringEndVolts, volts, new double[0]);
        }
    }

    record Voiding(String reason) {}

    @GetMapping("/api/strings/{stringId}/capacity-tests")
    List<CapacityTestView> ofString(@PathVariable long stringId) {
        return tests.testsOf(stringId);
    }

    @GetMapping("/api/strings/{stringId}/capacity")
    CapacityStanding standing(@PathVariable long stringId) {
        return tests.standing(stringId);
    }

    @PostMapping(path = "/api/strings/{stringId}/capacity-tests", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<CapacityTestView> record(@PathVariable long stringId, @RequestBody Body body) {
        access.require(Permission.HAND_IN_SURVEYS);
        Typed typed = body.discharge();
        if (typed == null) {
            throw new org.ohmstead.kernel.Refused("Give the discharge, or attach the record as a file.");
        }
        return created(tests.record(body.test(stringId), typed.drawn()));
    }

    @PostMapping(path = "/api/strings/{stringId}/capacity-tests", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    ResponseEntity<CapacityTestView> recordFrom(
            @PathVariable long stringId, @RequestPart Body test, @RequestParam MultipartFile file) throws IOException {
        access.require(Permission.HAND_IN_SURVEYS);
        String name = file.getOriginalFilename();
        return created(tests.recordFrom(test.test(stringId), name == null ? "" : name, file.getBytes()));
    }

    private ResponseEntity<CapacityTestView> created(long id) {
        return ResponseEntity.created(URI.create("/api/capacity-tests/" + id)).body(tests.test(id));
    }

    @GetMapping("/api/capacity-tests/{id}")
    CapacityTestView test(@PathVariable long id) {
        return tests.test(id);
    }

    @PostMapping("/api/capacity-tests/{id}/void")
    CapacityTestView voidIt(@PathVariable long id, @RequestBody Voiding voiding) {
        tests.voidTest(id, voiding.reason());
        return tests.test(id);
    }

    @GetMapping("/api/capacity/{jarType}")
    Agreement agreement(@PathVariable String jarType) {
        return agreements.of(jarType);
    }

    /** The bytes as they came, named by us; never run as anything. */
    @GetMapping({"/capacity-tests/{id}/record", "/api/capacity-tests/{id}/record"})
    ResponseEntity<byte[]> raw(@PathVariable long id) {
        byte[] bytes = tests.raw(id);
        String disposition = ContentDisposition.attachment()
                .filename("capacity-test-" + id + ".csv")
                .build()
                .toString();
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_OCTET_STREAM)
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition)
                .header("X-Content-Type-Options", "nosniff")
                .body(bytes);
    }
}
