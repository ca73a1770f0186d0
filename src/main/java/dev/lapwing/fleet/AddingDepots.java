package dev.lapwing.fleet;

import dev.lapwing.web.FoundingDepots;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;

@ApplicationScoped
class AddingDepots implements FoundingDepots {
    @Inject
    KeepingDepots keeping;

    @Override
    public String found(NewDepot typed) {
        var season = new DepotRequest.SeasonDays(stripped(typed.opens()), stripped(typed.closes()));
        var request = new DepotRequest(stripped(typed.code()), typed.name(), stripped(typed.zone()), season, null);
        return keeping.add(request).code;
    }

    private static String stripped(String typed) {
        return typed == null ? null : typed.strip();
    }
}
