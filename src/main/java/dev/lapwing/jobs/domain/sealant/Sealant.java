package dev.lapwing.jobs.domain.sealant;

import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.domain.data.Row;
import dev.lapwing.jobs.domain.data.Table;
import dev.lapwing.jobs.domain.measure.Volume;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A sealant on the operator's list.
 *
 * @param membraneSystem the one system it belongs to
 * @param tube content of one tube, more than nothing
 */
public record Sealant(String name, String membraneSystem, Volume tube) {
    public Sealant {
        if (name.isBlank() || membraneSystem.isBlank() || tube.millilitres().signum() == 0) {
            throw new IllegalArgumentException("a sealant has a name, a membrane system and a content");
        }
    }

    /**
     * Reads an operator's list with the columns name, membraneSystem and tubeMillilitres.
     *
     * @throws dev.lapwing.jobs.domain.data.BadReferenceData when a row cannot be used
     */
    public static List<Sealant> readList(String file, String csv) {
        Set<String> names = new TreeSet<>();
        return Table.read(file, csv, "name", "membraneSystem", "tubeMillilitres").stream()
                .map(row -> read(row, names))
                .toList();
    }

    private static Sealant read(Row row, Set<String> names) {
        double millilitres = row.number("tubeMillilitres");
        if (millilitres <= 0) {
            throw row.refused("'tubeMillilitres' is more than 0");
        }
        if (!names.add(Words.key(row.text("name")))) {
            throw row.refused("'" + row.text("name") + "' comes twice");
        }
        return new Sealant(row.text("name"), row.text("membraneSystem"), Volume.ofMillilitres(millilitres));
    }

    /** Returns whether it belongs to a system; case and spacing of the name do not matter. */
    public boolean belongsTo(String system) {
        return Words.key(membraneSystem).equals(Words.key(system));
    }
}
