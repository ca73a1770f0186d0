package dev.lapwing.fleet;

import dev.lapwing.platform.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

/** Writes down who changed what in what is known of a unit. */
@ApplicationScoped
public class UnitChanges {
    private static final int LONGEST_TEXT = 500;

    /**
     * One act that changes facts.
     *
     * @param by sign-in name of who does it
     * @param reason why, or null
     */
    public record Act(Instant at, String by, String reason) {}

    @Inject
    Ids ids;

    /** Writes the fields that are not as they were, and from which day another season counts. */
    @Transactional(Transactional.TxType.MANDATORY)
    void write(Unit unit, UnitSnapshot before, Act act) {
        UnitSnapshot after = UnitSnapshot.of(unit);
        if (!after.season().equals(before.season())) {
            unit.seasonSince = unit.depot.dateAt(act.at());
        }
        int position = 0;
        for (Map.Entry<String, String> fact : after.facts().entrySet()) {
            String old = before.facts().get(fact.getKey());
            if (!Objects.equals(old, fact.getValue())) {
                add(unit.id, position++, new Field(fact.getKey(), old, fact.getValue()), act);
            }
        }
    }

    /** One field as it was and as it is now; null stands for nothing. */
    public record Field(String name, String before, String now) {}

    /** Writes down one field that another area keeps, unless it is as it was. */
    @Transactional(Transactional.TxType.MANDATORY)
    public void write(UUID unitId, Field field, Act act) {
        if (!Objects.equals(field.before(), field.now())) {
            add(unitId, 0, field, act);
        }
    }

    private void add(UUID unitId, int position, Field field, Act act) {
        var change = new UnitChange();
        change.id = ids.next();
        change.unitId = unitId;
        change.changedAt = act.at();
        change.changedBy = act.by();
        change.position = position;
        change.field = field.name();
        change.oldText = shortened(field.before());
        change.newText = shortened(field.now());
        change.reason = act.reason();
        change.persist();
    }

    private static String shortened(String text) {
        return text == null || text.length() <= LONGEST_TEXT ? text : text.substring(0, LONGEST_TEXT - 1) + "…";
    }
}
