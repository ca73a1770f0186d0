package dev.lapwing.jobs.web;

import dev.lapwing.jobs.domain.roof.PlacedObject;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A roof plan as it is drawn: front at the top, the length always 1000 points, the width to the same scale.
 *
 * @param across width in points
 */
public record PlanView(int across, List<Shape> shapes) {
    private static final int ALONG = 1000;
    private static final int BESIDE = 40;
    private static final int LABEL_DROP = 10;
    /** What is only a line in the plan is drawn this thick. */
    private static final int THINNEST = 6;

    /** Something on the roof: its corner and size in points. */
    public record Shape(String type, int left, int top, int width, int height) {}

    /** Returns the width of the drawing with the space beside the roof. */
    public int boxWidth() {
        return across + 2 * BESIDE;
    }

    /** Returns the lines between the nine fields. */
    public String grid() {
        return Stream.of(1, 2)
                .map(third -> "M0 " + third * ALONG / 3 + "H" + across + "M" + third * across / 3 + " 0V" + ALONG)
                .collect(Collectors.joining());
    }

    public int middle() {
        return across / 2;
    }

    /** The numbered dot of a finding. */
    public record Dot(int number, int along, int across) {
        public int labelAt() {
            return along + LABEL_DROP;
        }
    }

    /** Returns the dots of the findings that have a place on the plan. */
    List<Dot> dots(List<SheetState.FindingLine> findings) {
        List<Dot> dots = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            SheetState.FindingLine found = findings.get(i);
            if (found.x() != null) {
                dots.add(new Dot(i + 1, (int) Math.round(found.x() * ALONG), (int) Math.round(found.y() * across)));
            }
        }
        return dots;
    }

    static PlanView of(RoofPlan plan) {
        double scale = ALONG / plan.lengthMetres();
        int across = (int) Math.round(plan.widthMetres() * scale);
        return new PlanView(
                across,
                plan.objects().stream()
                        .map(object -> shape(object, scale, across))
                        .toList());
    }

    private static Shape shape(PlacedObject object, double scale, int across) {
        int width = points(object.widthMetres(), scale);
        int height = points(object.lengthMetres(), scale);
        int left = (int) Math.round(object.y() * across - width / 2.0);
        int top = (int) Math.round(object.x() * ALONG - height / 2.0);
        return new Shape(object.type().word(), left, top, width, height);
    }

    private static int points(double metres, double scale) {
        return Math.max(THINNEST, (int) Math.round(metres * scale));
    }
}
