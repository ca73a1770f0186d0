package dev.lapwing.fleet;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.web.FoundingDepots;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;

/** Adds the depots that people type into forms. */
@ApplicationScoped
class AddingDepots implements FoundingDepots {
    @Inject
    KeepingDepots keeping;

    @Override
    @Transactional
    public void examine(NewDepot depot, FieldErrors errors) {
        DepotRequest request = request(depot);
        DepotFields.check(request, "opens", "closes", errors);
        errors.check(Depot.findById(request.code()) == null, "code", "is the code of a depot already");
    }

    @Override
    @Transactional
    public String found(NewDepot typed) {
        return keeping.add(request(typed)).code;
    }

    private static DepotRequest request(NewDepot typed) {
        var season = new DepotRequest.SeasonDays(stripped(typed.opens()), stripped(typed.closes()));
        return new DepotRequest(stripped(typed.code()), stripped(typed.name()), stripped(typed.zone()), season, null);
    }

    private static String stripped(String text) {
        return text == null ? "" : text.strip();
    }
}
