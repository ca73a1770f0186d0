package dev.lapwing.jobs.application;

import dev.lapwing.jobs.domain.sealant.Sealant;
import dev.lapwing.jobs.domain.surface.Cleaner;
import io.quarkus.runtime.Startup;
import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.eclipse.microprofile.config.Config;

/**
 * The cleaners and sealants that each depot has. A depot without a list of its own has that of the house. Read at start,
 * so that a bad list is refused before anyone goes by it.
 */
@Startup
@Singleton
public class DepotLists {
    private static final String CLEANERS = "lapwing.surfaces.cleaners";
    private static final String SEALANTS = "lapwing.surfaces.sealants";
    /** Between the name of a list and the code of the depot whose list it is. */
    private static final String AT = ".at.";

    @Inject
    Config config;

    @Inject
    SheetReference reference;

    private Map<String, List<Cleaner>> cleaners;
    private Map<String, List<Sealant>> sealants;

    @PostConstruct
    void load() {
        cleaners = lists(
                CLEANERS,
                "shared/surfaces/demo-cleaners.csv",
                (file, csv) -> Cleaner.readList(file, csv, reference.cleanerRules()));
        sealants = lists(SEALANTS, "shared/surfaces/demo-sealants.csv", Sealant::readList);
    }

    /** Returns the cleaners of a depot, in the order of its list. */
    public List<Cleaner> cleaners(String depot) {
        return cleaners.getOrDefault(depot, cleaners.get(""));
    }

    /** Returns the sealants of a depot, in the order of its list. */
    public List<Sealant> sealants(String depot) {
        return sealants.getOrDefault(depot, sealants.get(""));
    }

    /** Finds a cleaner on the list of a depot by its exact name. */
    Optional<Cleaner> cleaner(String depot, String name) {
        return cleaners(depot).stream()
                .filter(cleaner -> cleaner.name().equals(name))
                .findFirst();
    }

    /** Finds a sealant on the list of a depot by its exact name. */
    Optional<Sealant> sealant(String depot, String name) {
        return sealants(depot).stream()
                .filter(sealant -> sealant.name().equals(name))
                .findFirst();
    }

    /** Reads the list of the house, kept under "", and those of single depots. */
    private <T> Map<String, List<T>> lists(String setting, String usual, BiFunction<String, String, List<T>> reader) {
        Map<String, List<T>> lists = new HashMap<>();
        lists.put("", list(config.getOptionalValue(setting, Path.class).orElse(Path.of(usual)), reader));
        for (String name : config.getPropertyNames()) {
            if (name.startsWith(setting + AT)) {
                String depot = name.substring(setting.length() + AT.length());
                lists.put(depot, list(config.getValue(name, Path.class), reader));
            }
        }
        return lists;
    }

    private static <T> List<T> list(Path file, BiFunction<String, String, List<T>> reader) {
        return reader.apply(file.getFileName().toString(), SheetReference.read(file));
    }
}
