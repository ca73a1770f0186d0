package dev.lapwing.jobs.application;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.jobs.domain.data.BadReferenceData;
import dev.lapwing.jobs.domain.sealant.Sealant;
import dev.lapwing.jobs.domain.surface.Cleaner;
import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which cleaners and sealants a depot has. */
class DepotListsTest {
    @TempDir
    Path folder;

    @Test
    void aDepotHasItsOwnListOrThatOfTheHouse() throws IOException {
        Path own = Files.writeString(folder.resolve("own.csv"), "name,classes\nYard Soap,mild-detergent\n");

        DepotLists lists = lists(Map.of("lapwing.surfaces.cleaners.at.tarn-hollow", own.toString()));

        assertThat(lists.cleaners("tarn-hollow")).extracting(Cleaner::name).containsExactly("Yard Soap");
        assertThat(lists.cleaners("cinder-flats")).extracting(Cleaner::name).contains("Bramblewash Gentle");
        assertThat(lists.cleaner("cinder-flats", "Yard Soap")).isEmpty();
        assertThat(lists.sealants("tarn-hollow")).isEqualTo(lists.sealants("cinder-flats"));
    }

    @Test
    void everyMembraneSystemOfTheDemoFleetHasASealantOnTheDemoList() throws IOException {
        DepotLists lists = lists(Map.of());

        assertThat(Files.readAllLines(Path.of("shared/demo/units.csv")).stream()
                        .skip(1)
                        .map(line -> line.split(",", -1)[8])
                        .filter(system -> !system.isEmpty())
                        .distinct())
                .isNotEmpty()
                .allSatisfy(system -> assertThat(lists.sealants("tarn-hollow"))
                        .anyMatch((Sealant sealant) -> sealant.belongsTo(system)));
    }

    @Test
    void aWrongListKeepsTheServiceFromStarting() throws IOException {
        Path wrong = Files.writeString(folder.resolve("wrong.csv"), "name,classes\nYard Soap,magic\n");

        assertThatThrownBy(() -> lists(Map.of("lapwing.surfaces.cleaners.at.tarn-hollow", wrong.toString())))
                .isInstanceOf(BadReferenceData.class)
                .hasMessageContaining("wrong.csv")
                .hasMessageContaining("'magic' is not a class of cleaner");
    }

    private static DepotLists lists(Map<String, String> settings) {
        var reference = new SheetReference();
        reference.jobs = Path.of("shared/jobs");
        reference.surfaces = Path.of("shared/surfaces");
        reference.load();
        var lists = new DepotLists();
        lists.reference = reference;
        lists.config = new SmallRyeConfigBuilder()
                .withSources(new PropertiesConfigSource(settings, "test", 100))
                .build();
        lists.load();
        return lists;
    }
}
