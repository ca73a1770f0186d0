package dev.lapwing.care.storage;

import dev.lapwing.care.domain.Standing;
import dev.lapwing.fleet.Depot;
import io.quarkus.panache.common.Parameters;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Reads the due list by standing. A standing depends on the date at the task's depot, so the depots are taken together
 * by the date they have at one instant; the same conditions choose and count, so the counts add up to the list.
 */
public final class DueBoard {
    private static final Map<Standing, String> DATES = Map.of(
            Standing.LATE, "t.late < :today%1$d",
            Standing.DUE, "t.late >= :today%1$d and t.opens <= :today%1$d",
            Standing.COMING, "t.late >= :today%1$d and t.opens > :today%1$d");

    private final List<Map.Entry<LocalDate, List<String>>> depotsByDate;

    /** Takes the dates of all depots at an instant. */
    public DueBoard(Instant now) {
        depotsByDate = new ArrayList<>(Depot.byName().stream()
                .collect(Collectors.groupingBy(
                        depot -> depot.dateAt(now),
                        TreeMap::new,
                        Collectors.mapping(depot -> depot.code, Collectors.toList())))
                .entrySet());
    }

    /** Returns up to {@code limit} tasks of one standing that follow a place, units and depots loaded with them. */
    public List<CareTask> after(Standing standing, DueList.Filter filter, DueList.Place place, int limit) {
        var parameters = parameters(standing, filter)
                .and("rank", place.rank())
                .and("dueAt", place.dueAt())
                .and("id", place.id());
        return CareTask.<CareTask>find(
                        "from CareTask t join fetch t.unit join fetch t.depot" + DueList.WANTED + standsAs(standing)
                                + DueList.BEYOND + " order by " + DueList.RANK + ", t.dueAt, t.id",
                        parameters)
                .range(0, limit - 1)
                .list();
    }

    /** Returns how many tasks of each standing the filter lets through. */
    public Map<Standing, Long> counts(DueList.Filter filter) {
        Map<Standing, Long> counts = new EnumMap<>(Standing.class);
        for (Standing standing : Standing.values()) {
            String query = "from CareTask t" + DueList.WANTED + standsAs(standing);
            counts.put(standing, CareTask.count(query, parameters(standing, filter)));
        }
        return counts;
    }

    private String standsAs(Standing standing) {
        if (standing == Standing.STRIKE) {
            return " and t.kind = STRIKE_INSPECTION";
        }
        List<String> clauses = new ArrayList<>();
        for (int i = 0; i < depotsByDate.size(); i++) {
            clauses.add(("t.depot.code in :depots%1$d and " + DATES.get(standing)).formatted(i));
        }
        String any = clauses.isEmpty() ? "false" : String.join(" or ", clauses);
        return " and t.kind <> STRIKE_INSPECTION and (" + any + ")";
    }

    private Parameters parameters(Standing standing, DueList.Filter filter) {
        Parameters parameters = DueList.of(filter);
        if (standing == Standing.STRIKE) {
            return parameters;
        }
        for (int i = 0; i < depotsByDate.size(); i++) {
            parameters
                    .and("today" + i, depotsByDate.get(i).getKey())
                    .and("depots" + i, depotsByDate.get(i).getValue());
        }
        return parameters;
    }
}
