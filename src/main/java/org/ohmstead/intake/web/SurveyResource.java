package org.ohmstead.intake.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.kernel.Refused;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.ohmstead.ledger.Withdrawal;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Stored surveys and their amendments. Nothing is deleted: a survey is voided, superseded, or restored. */
@RestController
@RequestMapping("/api/surveys/{id}")
class SurveyResource {

    private final SurveyLedger ledger;
    private final Access access;

    SurveyResource(SurveyLedger ledger, Access access) {
        this.ledger = ledger;
        this.access = access;
    }

    /**
     * A survey with its readings; what was not measured is null.
     *
     * @param ohmic per position, in the unit of the survey's ohmic kind
     * @param linkMicroohms per link 0..N, then per strap
     */
    record SurveyJson(
            long id,
            SurveyFacts facts,
            List<@Nullable Double> ohmic,
            List<@Nullable Double> volts,
            List<@Nullable Double> celsius,
            List<@Nullable Double> gravity,
            List<List<@Nullable Double>> linkMicroohms,
            @Nullable Withdrawal withdrawal) {}

    /**
     * Why an amendment is made.
     *
     * @param by the survey that takes the place of a superseded one
     * @param voidOther on restoring: void the survey that took its place, in the same act
     */
    record Amendment(
            String reason, @Nullable Long by, @Nullable Boolean voidOther) {}

    @GetMapping
    SurveyJson survey(@PathVariable long id) {
        SurveyRecord survey = ledger.survey(id);
        Readings readings = survey.readings();
        return new SurveyJson(
                survey.id(),
                survey.facts(),
                present(readings.ohmic()),
                present(readings.volts()),
                present(readings.celsius()),
                present(readings.gravity()),
                Arrays.stream(readings.linkMicroohms())
                        .map(SurveyResource::present)
                        .toList(),
                survey.withdrawal());
    }

    @PostMapping("/void")
    SurveyJson voidIt(@PathVariable long id, @RequestBody Amendment amendment) {
        ledger.withdraw(id, amendment.reason());
        return survey(id);
    }

    @PostMapping("/supersede")
    SurveyJson supersede(@PathVariable long id, @RequestBody Amendment amendment) {
        access.require(Permission.SETTLE_SURVEYS);
        if (amendment.by() == null) {
            throw new Refused("Name the survey that takes its place in \"by\".");
        }
        ledger.supersede(id, amendment.by(), amendment.reason());
        return survey(id);
    }

    @PostMapping("/restore")
    SurveyJson restore(@PathVariable long id, @RequestBody Amendment amendment) {
        if (Boolean.TRUE.equals(amendment.voidOther())) {
            ledger.exchangeBack(id, amendment.reason());
        } else {
            ledger.restore(id, amendment.reason());
        }
        return survey(id);
    }

    private static List<@Nullable Double> present(double[] values) {
        List<@Nullable Double> present = new ArrayList<>(values.length);
        for (double value : values) {
            present.add(Double.isNaN(value) ? null : value);
        }
        return present;
    }
}
