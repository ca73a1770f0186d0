package dev.lapwing.jobs.domain.material;

import dev.lapwing.jobs.domain.measure.Length;
import dev.lapwing.jobs.domain.measure.Volume;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How many tubes a run of bead takes.
 *
 * @param net volume of the bead itself
 * @param withWaste the same with the waste allowance
 * @param tubes whole tubes to take along
 */
public record TubeNeed(BeadRun run, BeadSettings settings, Volume tube, Volume net, Volume withWaste, int tubes) {
    /**
     * Works out the tubes: length × width × height, with waste, divided by the content of a tube, rounded up.
     *
     * @param tube content of one tube, more than nothing
     */
    public static TubeNeed of(BeadRun run, BeadSettings settings, Volume tube) {
        if (tube.millilitres().signum() == 0) {
            throw new IllegalArgumentException("a tube holds more than nothing");
        }
        Volume net = Volume.ofBead(run.length(), settings.width(), settings.height());
        Volume withWaste = new Volume(net.millilitres().multiply(settings.wasteFactor()));
        int tubes = withWaste
                .millilitres()
                .divide(tube.millilitres(), 0, RoundingMode.CEILING)
                .intValueExact();
        return new TubeNeed(run, settings, tube, net, withWaste, tubes);
    }

    /** Shows the arithmetic in metric units, one step a line. */
    public List<String> metricLines() {
        List<String> lines = new ArrayList<>(partLines());
        lines.add("bead length: " + sum());
        lines.add("bead: " + plain(run.length().millimetres()) + " mm × "
                + plain(settings.width().millimetres()) + " mm × "
                + plain(settings.height().millimetres()) + " mm = " + plain(net.millilitres()) + " mL");
        lines.add("with " + settings.wastePercent() + " % waste: " + plain(net.millilitres()) + " mL × "
                + settings.wasteFactor().toPlainString() + " = " + plain(withWaste.millilitres()) + " mL");
        lines.add("tubes: " + plain(withWaste.millilitres()) + " mL ÷ " + plain(tube.millilitres()) + " mL = "
                + rounded(withWaste.millilitres().divide(tube.millilitres(), 2, RoundingMode.HALF_UP))
                + ", rounded up: " + tubes);
        return lines;
    }

    /** Shows the same steps in US units, rounded for reading; the tubes come from the unrounded figures. */
    public List<String> usLines() {
        return List.of(
                "bead length: " + rounded(run.length().inches()) + " in",
                "bead: " + rounded(run.length().inches()) + " in × "
                        + rounded(settings.width().inches()) + " in × "
                        + rounded(settings.height().inches()) + " in = " + rounded(net.usFluidOunces()) + " US fl oz",
                "with " + settings.wastePercent() + " % waste: " + rounded(withWaste.usFluidOunces()) + " US fl oz",
                "tubes: " + rounded(withWaste.usFluidOunces()) + " US fl oz ÷ " + rounded(tube.usFluidOunces())
                        + " US fl oz, rounded up: " + tubes);
    }

    private List<String> partLines() {
        List<String> lines = new ArrayList<>();
        run.parts()
                .forEach(part -> lines.add(part.what()
                        + (part.measured() ? ": as measured, " : ": not measured, taken as ")
                        + centimetres(part.length())));
        run.notCounted()
                .forEach(finding -> lines.add(
                        finding.inWords() + ": not counted, patched as the maker of the membrane prescribes"));
        return lines;
    }

    private String sum() {
        String total = centimetres(run.length());
        String parts =
                run.parts().stream().map(part -> centimetres(part.length())).collect(Collectors.joining(" + "));
        return run.parts().size() > 1 ? parts + " = " + total : total;
    }

    private static String centimetres(Length length) {
        return plain(length.centimetres()) + " cm";
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    private static String rounded(BigDecimal value) {
        return value.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
