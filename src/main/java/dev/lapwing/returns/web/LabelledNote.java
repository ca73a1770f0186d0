package dev.lapwing.returns.web;

import dev.lapwing.returns.storage.ReadingCorrection;
import java.util.Locale;

/** A note with what a person says it tells, in the form of the files in shared/reading/notes. */
record LabelledNote(String id, String language, String note, String verdict, String kind, double travelHeightMetres) {

    static LabelledNote of(ReadingCorrection correction) {
        return new LabelledNote(
                "desk-" + correction.id,
                correction.report.readingLanguage,
                correction.report.note,
                correction.contact ? "contact" : "none",
                correction.source.name().toLowerCase(Locale.ROOT),
                correction.report.unit.heightMetres.doubleValue());
    }
}
