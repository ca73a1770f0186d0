package dev.lapwing.fleet.imports;

import dev.lapwing.platform.Refused;
import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;

/** Knows the tables that the areas give. */
@ApplicationScoped
class Tables {
    @Inject
    @All
    List<CsvTable> all;

    List<CsvTable> all() {
        return all;
    }

    CsvTable require(String name) {
        return all.stream()
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow(() -> Refused.notFound("table " + name));
    }
}
