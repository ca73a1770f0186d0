package dev.lapwing.jobs.application;

import dev.lapwing.care.RoofCautions;
import dev.lapwing.fleet.Roof;
import dev.lapwing.jobs.domain.sheet.Footing;
import dev.lapwing.jobs.domain.sheet.Text;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;

@ApplicationScoped
class CautionsForRoofs implements RoofCautions {
    @Inject
    SheetReference reference;

    @Override
    public List<String> inShort(Roof roof, String language) {
        return in(language, reference.cautions().inShort(Footing.of(roof.footing.word())));
    }

    @Override
    public List<String> inShort(String language) {
        return in(language, reference.cautions().inShort());
    }

    private static List<String> in(String language, List<Text> texts) {
        return texts.stream().map(text -> text.in(language)).toList();
    }
}
