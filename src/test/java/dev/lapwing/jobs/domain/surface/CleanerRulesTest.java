package dev.lapwing.jobs.domain.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.jobs.domain.SharedFiles;
import dev.lapwing.jobs.domain.data.BadReferenceData;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may touch which roof. Common practice, no source. */
class CleanerRulesTest {
    private static final String SURFACES = SharedFiles.read("surfaces/surfaces.csv");
    private static final String CLASSES = SharedFiles.read("surfaces/cleaner-classes.csv");
    private static final String TOUCH = SharedFiles.read("surfaces/what-may-touch.csv");
    private final CleanerRules rules = new CleanerRules(SURFACES, CLASSES, TOUCH);

    @ParameterizedTest
    @ValueSource(strings = {"petroleum-distillate", "citrus", "abrasive"})
    void syntheticRubberBearsNoDistillateNoCitrusNoAbrasive(String type) {
        assertThat(refused("EPDM", type).makerMayAllow()).isFalse();
        assertThat(refused("TPO", type).makerMayAllow()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"petroleum-distillate", "citrus", "abrasive"})
    void theMakerOfATpoRoofMayAllowWhatEpdmNeverBears(String type) {
        String statement = "care sheet of the roof's maker, 2025-03";

        assertThat(rules.mayTouch("TPO", cleaner(type), statement))
                .isEqualTo(new CleanerAnswer.Allowed("the maker of the roof allows it: " + statement));
        assertThat(rules.mayTouch("EPDM", cleaner(type), statement)).isInstanceOf(CleanerAnswer.Refused.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "EPDM",
                "TPO",
                "PVC",
                "fibreglass",
                "aluminium",
                "galvanised steel",
                "other",
                "Fiberglass",
                "aluminum"
            })
    void everySurfaceBearsMildDetergent(String surface) {
        assertThat(rules.mayTouch(surface, cleaner("mild-detergent"), null)).isInstanceOf(CleanerAnswer.Allowed.class);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"-", "''", "slate"})
    void anUnknownSurfaceIsTreatedAsTheMostDelicate(String surface) {
        var answer = (CleanerAnswer.Refused) rules.mayTouch(surface, cleaner("citrus"), "the maker says so");

        assertThat(answer.reasons()).singleElement().asString().contains("not known");
    }

    @Test
    void aMixedCleanerIsRefusedForEachClassTheSurfaceDoesNotBear() {
        var mixed = new Cleaner("Mix", List.of("citrus", "mild-detergent", "petroleum-distillate"));

        var answer = (CleanerAnswer.Refused) rules.mayTouch("EPDM", mixed, null);

        assertThat(answer.reasons())
                .containsExactly(
                        "Citrus-based on EPDM rubber: citrus oil attacks synthetic rubber",
                        "Petroleum distillate on EPDM rubber: petroleum distillates swell and soften synthetic rubber");
    }

    @Test
    void aClassThatIsNotKnownIsRefused() {
        assertThat(refused("EPDM", "snake-oil").reasons())
                .singleElement()
                .asString()
                .contains("not known");
    }

    @Test
    void theDemoListReadsAndHasSomethingForEveryRoof() {
        var cleaners = Cleaner.readList("demo-cleaners.csv", SharedFiles.read("surfaces/demo-cleaners.csv"), rules);

        assertThat(cleaners)
                .anyMatch(cleaner -> rules.mayTouch("other", cleaner, null) instanceof CleanerAnswer.Allowed)
                .anyMatch(cleaner -> rules.mayTouch("EPDM", cleaner, null) instanceof CleanerAnswer.Refused);
    }

    @Test
    void aMissingPairIsRefused() {
        String without = TOUCH.replaceFirst("(?m)^TPO,citrus,.*\\R", "");

        assertThatThrownBy(() -> new CleanerRules(SURFACES, CLASSES, without))
                .isInstanceOf(BadReferenceData.class)
                .hasMessageContaining("no verdict for tpo, citrus");
    }

    @Test
    void aWrongWordIsRefusedWithItsLine() {
        String wrong = TOUCH.replaceFirst("(?m)^EPDM,mild-detergent,allowed", "EPDM,mild-detergent,perhaps");

        assertThatThrownBy(() -> new CleanerRules(SURFACES, CLASSES, wrong))
                .isInstanceOf(BadReferenceData.class)
                .hasMessageContaining("what-may-touch.csv, line 2: 'verdict' is 'perhaps'");
    }

    @ParameterizedTest
    @CsvSource({"'A,citrus\nA,citrus', comes twice", "'A,snake-oil', not a class", "'A,', empty"})
    void aWrongListOfCleanersIsRefused(String rows, String why) {
        assertThatThrownBy(() -> Cleaner.readList("list.csv", "name,classes\n" + rows, rules))
                .isInstanceOf(BadReferenceData.class)
                .hasMessageContaining(why);
    }

    private CleanerAnswer.Refused refused(String surface, String type) {
        return (CleanerAnswer.Refused) rules.mayTouch(surface, cleaner(type), null);
    }

    private static Cleaner cleaner(String type) {
        return new Cleaner("Any", List.of(type));
    }
}
