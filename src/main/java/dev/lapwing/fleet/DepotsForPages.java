package dev.lapwing.fleet;

import dev.lapwing.web.DepotChoices;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;

@ApplicationScoped
class DepotsForPages implements DepotChoices {
    @Override
    @Transactional
    public List<Choice> all() {
        return Depot.byName().stream()
                .map(depot -> new Choice(depot.code, depot.name, depot.zoneId()))
                .toList();
    }
}
