package dev.lapwing.jobs.domain.sealant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.jobs.domain.SharedFiles;
import dev.lapwing.jobs.domain.data.BadReferenceData;
import dev.lapwing.jobs.domain.measure.Volume;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sealant goes only with its own membrane system. Common practice, no source. */
class SealantGuardTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 5, 4);
    private static final Membrane CONFIRMED = new Membrane("Aldermere R", "dealer", TODAY.minusYears(1));
    private static final Sealant OWN = new Sealant("Lap", "Aldermere R", Volume.ofMillilitres(300));
    private static final Sealant FOREIGN = new Sealant("Seam", "Coppice T", Volume.ofMillilitres(300));

    @Test
    void allowsTheSealantOfTheRoofsOwnSystem() {
        assertThat(guard(CONFIRMED, false).mayUse(OWN, null))
                .isEqualTo(new SealantAnswer.Allowed(
                        "Lap belongs to this roof's system, confirmed by dealer on 2025-05-04"));
    }

    @Test
    void refusesTheSealantOfAnotherSystem() {
        assertThat(guard(CONFIRMED, false).mayUse(FOREIGN, null)).isInstanceOf(SealantAnswer.WrongSystem.class);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "-, dealer, 2025-05-04, is not recorded",
                "' ', dealer, 2025-05-04, is not recorded",
                "Aldermere R, -, 2025-05-04, nobody has confirmed",
                "Aldermere R, dealer, -, day of the confirmation is not recorded",
                "Aldermere R, dealer, 2026-05-05, still to come",
            })
    void asksForConfirmationFirst(String system, String by, LocalDate on, String why) {
        var answer = guard(new Membrane(system, by, on), false).mayUse(OWN, null);

        assertThat(answer).isInstanceOf(SealantAnswer.ConfirmFirst.class);
        assertThat(answer.because()).contains(why).contains("confirm the membrane system");
    }

    @Test
    void theCoordinatorMayOverruleWithNameAndSource() {
        var overrule = new Overrule("coordinator", "Aldermere R", "call with the dealer on 3 May");

        assertThat(guard(Membrane.UNKNOWN, false).mayUse(OWN, overrule))
                .isEqualTo(new SealantAnswer.Allowed("Lap belongs to this roof's system, confirmed by call with the"
                        + " dealer on 3 May, on the word of coordinator"));
        assertThat(guard(Membrane.UNKNOWN, false).mayUse(FOREIGN, overrule))
                .isInstanceOf(SealantAnswer.WrongSystem.class);
    }

    @Test
    void anOverruleDoesNotChangeAConfirmedSystem() {
        var overrule = new Overrule("coordinator", "Coppice T", "a hunch");

        assertThat(guard(CONFIRMED, false).mayUse(FOREIGN, overrule)).isInstanceOf(SealantAnswer.WrongSystem.class);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"-, R, call", "someone, ' ', call", "someone, R, -"})
    void overrulingNeedsNameSystemAndSource(String coordinator, String system, String source) {
        assertThatThrownBy(() -> new Overrule(coordinator, system, source)).hasMessageContaining("overruling needs");
    }

    @Test
    void aChalkingSurfaceIsTreatedFirst() {
        assertThat(guard(CONFIRMED, true).mayUse(OWN, null)).isInstanceOf(SealantAnswer.TreatFirst.class);
    }

    @Test
    void theDemoListReads() {
        var sealants = Sealant.readList("demo-sealants.csv", SharedFiles.read("surfaces/demo-sealants.csv"));

        assertThat(sealants).anyMatch(sealant -> sealant.belongsTo("hallowsheet e60"));
    }

    @ParameterizedTest
    @CsvSource({"'A,R,0', more than 0", "'A,R,lots', not a number", "'A,R,300\nA,R,300', comes twice", "'A,,300', empty"
    })
    void aWrongListIsRefused(String rows, String why) {
        assertThatThrownBy(() -> Sealant.readList("list.csv", "name,membraneSystem,tubeMillilitres\n" + rows))
                .isInstanceOf(BadReferenceData.class)
                .hasMessageContaining(why);
    }

    private static SealantGuard guard(Membrane membrane, boolean chalking) {
        return new SealantGuard(membrane, chalking, TODAY);
    }
}
