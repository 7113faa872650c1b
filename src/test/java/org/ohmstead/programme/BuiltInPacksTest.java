package org.ohmstead.programme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.kernel.Technology;
import org.ohmstead.programme.rules.Branch;
import org.ohmstead.programme.rules.Counting;
import org.ohmstead.programme.rules.EvidenceKind;
import org.ohmstead.programme.rules.Interval;
import org.ohmstead.programme.rules.Provenance;
import org.ohmstead.programme.rules.Requirement;
import org.ohmstead.programme.rules.RulePack;
import tools.jackson.databind.json.JsonMapper;

class BuiltInPacksTest {

    static RulePack pack(String code) {
        try (InputStream file = BuiltInPacksTest.class.getResourceAsStream("/programme/" + code + ".json")) {
            return JsonMapper.shared().readValue(Objects.requireNonNull(file), RulePack.class);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/programme/intervals.csv", numLinesToSkip = 1)
    void intervalsAreThoseOfTheSources(
            String pack,
            String requirement,
            String branch,
            int count,
            Interval.Unit unit,
            Counting counting,
            String source) {
        Branch found = pack(pack).find(requirement).orElseThrow().branch(branch);
        assertThat(found.interval()).as(source).isEqualTo(new Interval(count, unit, counting));
    }

    /** Table 1-4 of PRC-005-6, recalled (high): every cell or unit, every connection. */
    @ParameterizedTest
    @ValueSource(strings = {"protection-vented", "protection-valve-regulated", "protection-nickel-cadmium"})
    void theStandardWantsEveryUnit(String code) {
        assertThat(pack(code).requirements().stream()
                        .flatMap(requirement -> requirement.branches().stream())
                        .filter(branch -> branch.evidence().stream().anyMatch(EvidenceKind::isOfUnits)))
                .isNotEmpty()
                .allSatisfy(branch -> assertThat(branch.coverage()).isEqualTo(1.0));
    }

    /** Table 1-4(f) of PRC-005-6, recalled: what is monitored and alarmed need not be looked at, but racks and capacity are. */
    @ParameterizedTest
    @ValueSource(strings = {"protection-vented", "protection-valve-regulated", "protection-nickel-cadmium"})
    void monitoringTakesThePlaceOfWhatItSees(String code) {
        Stream.of("dc-supply-voltage", "grounds", "charger-float-voltage", "continuity", "intercell-resistance")
                .forEach(requirement -> assertThat(pack(code)
                                .find(requirement)
                                .orElseThrow()
                                .branch("monitored")
                                .interval())
                        .as(requirement)
                        .isNull());
        assertThat(pack(code).find("rack").orElseThrow().isEitherOr()).isFalse();
        assertThat(pack(code).find("performs-as-manufactured").orElseThrow().branches())
                .extracting(Branch::code)
                .doesNotContain("monitored");
    }

    /** Table 1-4(c), recalled (high). */
    @Test
    void nickelCadmiumHasNoOhmicAlternativeToTheCapacityTest() {
        assertThat(pack("protection-nickel-cadmium")
                        .find("performs-as-manufactured")
                        .orElseThrow()
                        .isEitherOr())
                .isFalse();
    }

    @Test
    void valveRegulatedJarsHaveNoElectrolyteToLookAt() {
        assertThat(pack("protection-valve-regulated").find("electrolyte-level")).isEmpty();
        assertThat(EvidenceKind.checklist(Technology.AGM)).doesNotContain(EvidenceKind.CHECK_ELECTROLYTE_LEVEL);
        assertThat(EvidenceKind.checklist(Technology.VENTED_LEAD_ACID)).contains(EvidenceKind.CHECK_ELECTROLYTE_LEVEL);
    }

    @ParameterizedTest
    @ValueSource(strings = {"protection-vented", "protection-valve-regulated", "protection-nickel-cadmium"})
    void whatIsRecalledSaysSo(String code) {
        RulePack pack = pack(code);
        assertThat(pack.note()).contains("verify them against the published standard");
        assertThat(pack.requirements()).extracting(Requirement::provenance).containsOnly(Provenance.RECALLED);
        assertThat(Provenance.RECALLED.words()).contains("verify against your edition");
    }

    @ParameterizedTest
    @EnumSource(Technology.class)
    void everyTechnologyHasAUsualPackThatSuitsIt(Technology technology) {
        RulePack usual = pack(ProgrammeKeeping.usualPack(technology));
        assertThat(usual.suits(technology)).isTrue();
        assertThat(usual.requirements().stream()
                        .flatMap(requirement -> requirement.branches().stream())
                        .flatMap(branch -> branch.evidence().stream())
                        .filter(EvidenceKind::isCheck))
                .isSubsetOf(EvidenceKind.checklist(technology));
    }

    @Test
    void theEmptyPackAsksNothing() {
        assertThat(pack("empty").isEmpty()).isTrue();
    }
}
