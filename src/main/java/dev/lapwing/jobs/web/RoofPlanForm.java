package dev.lapwing.jobs.web;

import dev.lapwing.jobs.application.PlanEntry;
import dev.lapwing.jobs.application.RoofPlans;
import dev.lapwing.jobs.domain.roof.PlacedObject;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import dev.lapwing.platform.FieldErrors;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jboss.resteasy.reactive.RestForm;

/** The form of a roof plan as typed, in metres from the front and from the left. Nothing is lost when it is shown again. */
public class RoofPlanForm {
    private static final String NEW_SIZE = "0.4";

    @RestForm
    String version;

    @RestForm
    String width;

    /** What the pressed button asks for: save, add, undo, or remove-3. */
    @RestForm
    String act;

    @RestForm
    String addType;

    @RestForm
    List<String> id;

    @RestForm
    List<String> type;

    @RestForm
    List<String> name;

    @RestForm
    List<String> front;

    @RestForm
    List<String> left;

    @RestForm
    List<String> along;

    @RestForm
    List<String> across;

    /** One object as typed. */
    public record Typed(String id, String type, String name, String front, String left, String along, String across) {}

    /** Returns the form of a plan as it is saved. */
    static RoofPlanForm of(RoofPlans.Current current) {
        RoofPlan plan = current.plan();
        var form = new RoofPlanForm();
        form.version = String.valueOf(current.version());
        form.width = metres(plan.widthMetres());
        form.id = new ArrayList<>();
        form.type = new ArrayList<>();
        form.name = new ArrayList<>();
        form.front = new ArrayList<>();
        form.left = new ArrayList<>();
        form.along = new ArrayList<>();
        form.across = new ArrayList<>();
        plan.placed().forEach(object -> form.add(typed(object, plan)));
        return form;
    }

    private static Typed typed(PlacedObject object, RoofPlan plan) {
        return new Typed(
                object.id(),
                object.type().word(),
                object.name(),
                metres(object.x() * plan.lengthMetres()),
                metres(object.y() * plan.widthMetres()),
                metres(object.lengthMetres()),
                metres(object.widthMetres()));
    }

    /** Writes metres to the centimetre. */
    static String metres(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Returns the objects as typed; a list that came too short counts as empty texts. */
    public List<Typed> rows() {
        int count = id == null ? 0 : id.size();
        return IntStream.range(0, count)
                .mapToObj(i -> new Typed(
                        at(id, i), at(type, i), at(name, i), at(front, i), at(left, i), at(along, i), at(across, i)))
                .toList();
    }

    private static String at(List<String> texts, int i) {
        return texts != null && i < texts.size() && texts.get(i) != null ? texts.get(i) : "";
    }

    private void add(Typed row) {
        id.add(row.id());
        type.add(row.type());
        name.add(row.name());
        front.add(row.front());
        left.add(row.left());
        along.add(row.along());
        across.add(row.across());
    }

    /** Adds an object of the chosen type in the middle of a roof of this length. */
    void addNew(double length) {
        List<Typed> rows = new ArrayList<>(rows());
        int number = rows.size() + 1;
        while (id != null && id.contains("o" + number)) {
            number++;
        }
        String typeWord = addType == null || addType.isBlank() ? "other" : addType;
        double middle = width == null ? 0 : orZero(width) / 2;
        rows.add(new Typed(
                "o" + number,
                typeWord,
                typeWord.replace('-', ' '),
                metres(length / 2),
                metres(middle),
                NEW_SIZE,
                NEW_SIZE));
        replace(rows);
    }

    /** Takes an object away by its place in the list. */
    void remove(String place) {
        List<Typed> rows = new ArrayList<>(rows());
        if (place.matches("[0-9]{1,4}") && Integer.parseInt(place) < rows.size()) {
            rows.remove(Integer.parseInt(place));
        }
        replace(rows);
    }

    private void replace(List<Typed> rows) {
        id = new ArrayList<>();
        type = new ArrayList<>();
        name = new ArrayList<>();
        front = new ArrayList<>();
        left = new ArrayList<>();
        along = new ArrayList<>();
        across = new ArrayList<>();
        rows.forEach(this::add);
    }

    /** Reads the plan; what cannot be read or lies beside the roof is noted by the name the contract has for it. */
    PlanEntry entry(double length, FieldErrors errors) {
        Double wide = number(width, "widthMetres", errors);
        double room = wide == null ? Double.MAX_VALUE : wide;
        List<PlanEntry.ObjectEntry> objects = new ArrayList<>();
        for (Typed row : rows()) {
            String at = "objects[" + objects.size() + "].";
            objects.add(new PlanEntry.ObjectEntry(
                    row.id(),
                    row.type(),
                    row.name(),
                    share(row.front(), length, at + "x", errors),
                    share(row.left(), room, at + "y", errors),
                    number(row.along(), at + "lengthMetres", errors),
                    number(row.across(), at + "widthMetres", errors)));
        }
        return new PlanEntry(version(), wide, objects);
    }

    /** Returns the version that was edited; an unreadable one is none that ever was. */
    int version() {
        return version != null && version.matches("[0-9]{1,9}") ? Integer.parseInt(version) : -1;
    }

    private static Double share(String metres, double roof, String field, FieldErrors errors) {
        Double value = number(metres, field, errors);
        if (value == null || !errors.check(value >= 0 && value <= roof, field, "is from 0 to " + metres(roof) + " m")) {
            return null;
        }
        return value / roof;
    }

    private static Double number(String text, String field, FieldErrors errors) {
        if (!errors.present(text, field)) {
            return null;
        }
        String plain = text.strip().replace(',', '.');
        return errors.check(plain.matches("-?[0-9]{1,6}(\\.[0-9]{1,6})?"), field, "is not a number of metres")
                ? Double.valueOf(plain)
                : null;
    }

    private static double orZero(String text) {
        Double value = number(text, "width", new FieldErrors());
        return value == null ? 0 : value;
    }

    public String versionText() {
        return version;
    }

    public String width() {
        return width;
    }
}
