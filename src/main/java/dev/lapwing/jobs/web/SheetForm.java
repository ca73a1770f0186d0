package dev.lapwing.jobs.web;

import dev.lapwing.jobs.domain.finding.FindingEntry;
import dev.lapwing.jobs.domain.sheet.SignOffEntry;
import dev.lapwing.jobs.domain.sheet.Text;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestForm;

/** The forms of the sheet as typed: one finding, or the signature. Nothing is lost when they are shown again. */
public class SheetForm {
    /** Tells one sending from the next, so that what is sent twice is kept once. */
    @RestForm
    public String key;

    @RestForm
    public String zone;

    @RestForm
    public String kind;

    @RestForm
    public String depth;

    @RestForm
    public String extent;

    @RestForm
    public String lengthCm;

    @RestForm
    public String note;

    /** Ids of the cautions that were ticked as read. */
    @RestForm
    public List<String> read;

    @RestForm
    public String dry;

    @RestForm
    public String by;

    @RestForm
    public String statement;

    FindingEntry finding() {
        return new FindingEntry(zone, kind, depth, extent, length(), note);
    }

    private Double length() {
        if (lengthCm == null || lengthCm.isBlank()) {
            return null;
        }
        try {
            return Double.valueOf(lengthCm.strip().replace(',', '.'));
        } catch (NumberFormatException wrong) {
            throw Refused.invalid("lengthCm", "is not a number");
        }
    }

    SignOffEntry signature(List<Text> cautions) {
        boolean all = read != null && cautions.stream().allMatch(caution -> read.contains(caution.id()));
        return new SignOffEntry(by, all, "yes".equals(dry), statement);
    }

    public boolean hasRead(String caution) {
        return read != null && read.contains(caution);
    }

    /** Returns what tells this form from another one that came with the same key. */
    String fingerprint(String task) {
        return Secrets.hash(
                Stream.of(task, zone, kind, depth, extent, lengthCm, note, String.valueOf(read), dry, by, statement)
                        .map(text -> text == null ? "" : text.length() + ":" + text)
                        .collect(Collectors.joining("|")));
    }
}
