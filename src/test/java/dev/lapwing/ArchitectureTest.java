package dev.lapwing;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import dev.lapwing.borders.domain.BadDomainClass;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The borders between areas, and the core free of frameworks. Each rule is shown to fail on code that breaks it. */
class ArchitectureTest {
    private static final String ROOT = "dev.lapwing.";
    private static final String[] FRAMEWORKS = {
        "io.quarkus..",
        "jakarta..",
        "org.hibernate..",
        "org.quartz..",
        "io.vertx..",
        "org.eclipse.microprofile..",
        "io.smallrye..",
        "org.jboss..",
        "java.sql.."
    };

    /** What each area may use beside itself; every one may also use the platform and the web shell. */
    private static final Map<String, List<String>> MAY_USE = Map.ofEntries(
            Map.entry("audit", List.of()),
            Map.entry("fleet", List.of()),
            Map.entry("use", List.of("fleet")),
            Map.entry("reading", List.of()),
            Map.entry("photos", List.of("fleet")),
            Map.entry("returns", List.of("fleet", "reading", "photos")),
            Map.entry("care", List.of("fleet", "use", "audit")),
            Map.entry("jobs", List.of("care", "fleet", "photos", "audit")),
            Map.entry("people", List.of()),
            Map.entry("alerts", List.of("care", "people", "fleet")),
            Map.entry("planning", List.of("care", "use", "people")),
            Map.entry(
                    "record",
                    List.of(
                            "fleet",
                            "use",
                            "reading",
                            "photos",
                            "returns",
                            "care",
                            "jobs",
                            "people",
                            "alerts",
                            "planning",
                            "audit")));

    private static final JavaClasses SERVICE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.lapwing");

    static Stream<ArchRule> borders() {
        return MAY_USE.keySet().stream().sorted().map(ArchitectureTest::borderOf);
    }

    private static ArchRule borderOf(String area) {
        List<String> forbidden = new ArrayList<>(MAY_USE.keySet());
        forbidden.remove(area);
        forbidden.removeAll(MAY_USE.get(area));
        forbidden.add("demo");
        return noClasses()
                .that()
                .resideInAPackage(ROOT + area + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        forbidden.stream().map(other -> ROOT + other + "..").toArray(String[]::new))
                .as(area + " uses only " + MAY_USE.get(area))
                .allowEmptyShould(true);
    }

    @ParameterizedTest
    @MethodSource("borders")
    void eachAreaKeepsToItsArrows(ArchRule border) {
        border.check(SERVICE);
    }

    @Test
    void theAreasFormNoCircle() {
        slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(SERVICE);
    }

    @Test
    void platformAndShellUseNoArea() {
        noClasses()
                .that()
                .resideInAnyPackage(ROOT + "platform..", ROOT + "web..")
                .should()
                .dependOnClassesThat(resideInAPackage("dev.lapwing..")
                        .and(not(resideInAPackage(ROOT + "platform..")))
                        .and(not(resideInAPackage(ROOT + "web.."))))
                .check(SERVICE);
    }

    private static ArchRule coreIsPlainJava() {
        return noClasses()
                .that()
                .resideInAnyPackage("..domain..", ROOT + "reading..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(FRAMEWORKS);
    }

    private static ArchRule coreIsHandedTheTime() {
        return noClasses()
                .that()
                .resideInAnyPackage("..domain..", ROOT + "reading..")
                .should()
                .callMethod(Instant.class, "now")
                .orShould()
                .callMethod(LocalDate.class, "now")
                .orShould()
                .callMethod(UUID.class, "randomUUID")
                .orShould()
                .callMethod(Clock.class, "systemUTC");
    }

    @Test
    void theCoreIsPlainJava() {
        coreIsPlainJava().check(SERVICE);
    }

    @Test
    void theCoreIsHandedTheTime() {
        coreIsHandedTheTime().check(SERVICE);
    }

    @Test
    void timeAndChanceComeFromThePlatformOnly() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + "platform..")
                .should()
                .callMethod(Instant.class, "now")
                .orShould()
                .callMethod(LocalDate.class, "now")
                .orShould()
                .callMethod(UUID.class, "randomUUID")
                .check(SERVICE);
    }

    @Test
    void recordOwnsNoTable() {
        classes()
                .that()
                .resideInAPackage(ROOT + "record..")
                .should()
                .notBeAnnotatedWith("jakarta.persistence.Entity")
                .check(SERVICE);
    }

    @Test
    void theRulesAboutTheCoreCanFail() {
        JavaClasses bad = new ClassFileImporter().importClasses(BadDomainClass.class);

        assertThat(coreIsPlainJava().evaluate(bad).hasViolation()).isTrue();
        assertThat(coreIsHandedTheTime().evaluate(bad).hasViolation()).isTrue();
    }
}
