package org.ohmstead.house;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import jakarta.persistence.Entity;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.Year;
import java.time.YearMonth;
import java.time.ZonedDateTime;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.ohmstead.Application;
import org.springframework.data.repository.Repository;
import org.springframework.modulith.core.ApplicationModules;
import org.springframework.stereotype.Controller;

/** The walls of the house. Each rule first proves that it has something to look at. */
class HouseTest {

    private static final String ROOT = "org.ohmstead.";

    /** Pure packages and what each may use besides the JDK, nullness annotations and the kernel. */
    static final List<Map.Entry<String, List<String>>> PURE = List.of(
            Map.entry("kernel", List.of()),
            Map.entry("chart", List.of()),
            Map.entry("statistics", List.of("org.hipparchus..")),
            Map.entry("fleet.csv", List.of("de.siegmar.fastcsv..")),
            Map.entry("intake.file", List.of("de.siegmar.fastcsv..", "javax.xml.stream..", "tools.jackson.core..")),
            Map.entry("intake.map", List.of(ROOT + "intake.file")),
            Map.entry("intake.forensics", List.of(ROOT + "statistics")),
            Map.entry(
                    "intake.check",
                    List.of("org.hipparchus..", ROOT + "intake.file", ROOT + "intake.forensics", ROOT + "statistics")),
            Map.entry("capacity.model", List.of("de.siegmar.fastcsv..")),
            Map.entry(
                    "intake.repair",
                    List.of(
                            ROOT + "intake.file",
                            ROOT + "intake.check",
                            ROOT + "intake.forensics",
                            ROOT + "statistics")),
            Map.entry("assessment.model", List.of("org.hipparchus..", ROOT + "statistics")),
            Map.entry("programme.rules", List.of()),
            Map.entry(
                    "reports.render",
                    List.of(
                            "de.siegmar.fastcsv..",
                            "org.dhatim.fastexcel..",
                            "org.apache.fontbox..",
                            "org.apache.pdfbox..")),
            Map.entry("programme.rounds", List.of()),
            Map.entry(
                    "worklist.model",
                    List.of(ROOT + "assessment.model", ROOT + "intake.check", ROOT + "programme.rules")),
            Map.entry(
                    "replay",
                    List.of(
                            "de.siegmar.fastcsv..",
                            ROOT + "fleet.csv",
                            ROOT + "intake.file",
                            ROOT + "intake.check",
                            ROOT + "assessment.model..")));

    private static final Set<Class<?>> CLOCK_READERS = Set.of(
            Instant.class,
            LocalDate.class,
            LocalDateTime.class,
            LocalTime.class,
            OffsetDateTime.class,
            ZonedDateTime.class,
            Year.class,
            YearMonth.class);

    private static JavaClasses production;

    @BeforeAll
    static void readTheHouse() {
        production = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.ohmstead");
    }

    @Test
    void modulesDependOnlyOnWhatTheyDeclare() {
        ApplicationModules.of(Application.class).verify();
    }

    @ParameterizedTest
    @FieldSource("PURE")
    void purePackagesStayPure(Map.Entry<String, List<String>> rule) {
        String pkg = ROOT + rule.getKey();
        assertThat(production.that(resideInAnyPackage(pkg, pkg + "..")))
                .as("classes in " + pkg)
                .isNotEmpty();
        String[] allowed = java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(
                                "java..", "org.jspecify.annotations..", ROOT + "kernel", pkg, pkg + ".."),
                        rule.getValue().stream())
                .toArray(String[]::new);
        classes()
                .that(resideInAnyPackage(pkg, pkg + ".."))
                .and()
                .doNotHaveSimpleName("package-info")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(allowed).or(primitiveOrArray()))
                .check(production);
    }

    @Test
    void onlyTheApplicationReadsTheWallClock() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName(Application.class.getName())
                .should()
                .accessTargetWhere(target(new DescribedPredicate<>("the wall clock") {
                    @Override
                    public boolean test(com.tngtech.archunit.core.domain.AccessTarget target) {
                        return readsTheWallClock(target);
                    }
                }))
                .check(production);
    }

    /** A call as well as a reference such as {@code Instant::now}. */
    private static boolean readsTheWallClock(com.tngtech.archunit.core.domain.AccessTarget target) {
        JavaClass owner = target.getOwner();
        String name = target.getName();
        boolean noArguments = target instanceof com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget call
                && call.getRawParameterTypes().isEmpty();
        boolean now =
                name.equals("now") && noArguments && CLOCK_READERS.stream().anyMatch(owner::isEquivalentTo);
        boolean system = owner.isEquivalentTo(System.class) && name.equals("currentTimeMillis");
        boolean clock = owner.isEquivalentTo(Clock.class) && name.startsWith("system");
        boolean date = owner.isEquivalentTo(Date.class) && name.equals("<init>") && noArguments;
        return now || system || clock || date;
    }

    @Test
    void onlyWebPackagesKnowHttp() {
        DescribedPredicate<JavaClass> web = resideInAnyPackage(
                "org.ohmstead.web", "org.ohmstead.web..", "org.ohmstead..web", "org.ohmstead..web..");
        assertThat(production.that(web)).isNotEmpty();
        noClasses()
                .that(not(web))
                .and()
                .doNotHaveFullyQualifiedName(Application.class.getName())
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                        "jakarta.servlet..",
                        "org.springframework.web..",
                        "org.springframework.http..",
                        "org.thymeleaf.."))
                .check(production);
    }

    @Test
    void entitiesRepositoriesAndControllersStayInTheirPackage() {
        assertThat(production.that(DescribedPredicate.describe(
                        "entities", (JavaClass type) -> type.isAnnotatedWith(Entity.class))))
                .isNotEmpty();
        classes()
                .that()
                .areAnnotatedWith(Entity.class)
                .or()
                .areAssignableTo(Repository.class)
                .or()
                .areMetaAnnotatedWith(Controller.class)
                .should()
                .bePackagePrivate()
                .check(production);
    }

    @Test
    void noPackageIsNamedAfterNothing() {
        noClasses()
                .should()
                .resideInAnyPackage("..util..", "..common..", "..service..", "..dto..", "..impl..")
                .check(production);
    }

    @Test
    void everyPackageSaysWhatItIsForAndIsNullMarked() {
        production.stream()
                .map(JavaClass::getPackage)
                .distinct()
                .forEach(pkg -> assertThat(pkg.tryGetPackageInfo())
                        .as(pkg.getName())
                        .hasValueSatisfying(
                                info -> assertThat(info.isAnnotatedWith(org.jspecify.annotations.NullMarked.class))
                                        .as(pkg.getName())
                                        .isTrue()));
    }

    private static DescribedPredicate<JavaClass> primitiveOrArray() {
        return DescribedPredicate.describe(
                "primitives and arrays", type -> type.isPrimitive() || type.isArray() && inside(type));
    }

    private static boolean inside(JavaClass array) {
        JavaClass element = array.getBaseComponentType();
        return element.isPrimitive()
                || element.getPackageName().startsWith("java.")
                || element.getPackageName().startsWith("org.ohmstead.");
    }
}
