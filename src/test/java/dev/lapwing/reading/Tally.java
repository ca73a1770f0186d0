package dev.lapwing.reading;

import dev.lapwing.record.domain.WilsonInterval;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Counts how notes were read against how they are labelled. */
final class Tally {
    private final long[][] counts = new long[3][3];
    private final List<String> wrong = new ArrayList<>();
    private long languageMistaken;

    void add(LabelledNote labelled, Reading reading) {
        counts[labelled.verdict().ordinal()][reading.verdict().ordinal()]++;
        if (!reading.language().equals(labelled.language())) {
            languageMistaken++;
        }
        if (labelled.verdict() != reading.verdict()) {
            wrong.add(String.format(
                    Locale.ROOT,
                    "%s %s -> %s (%.2f, %s) [%s]%n    %s%n    %s",
                    labelled.id(),
                    labelled.verdict().word(),
                    reading.verdict().word(),
                    reading.score(),
                    reading.language(),
                    labelled.kind(),
                    labelled.note(),
                    reading.reason()));
        }
    }

    double contactAsContact() {
        return share(ContactVerdict.CONTACT, ContactVerdict.CONTACT);
    }

    double contactAsNone() {
        return share(ContactVerdict.CONTACT, ContactVerdict.NONE);
    }

    double noneAsContact() {
        return share(ContactVerdict.NONE, ContactVerdict.CONTACT);
    }

    double noneAsUnclear() {
        return share(ContactVerdict.NONE, ContactVerdict.UNCLEAR);
    }

    List<String> wrong() {
        return wrong;
    }

    private double share(ContactVerdict labelled, ContactVerdict read) {
        return (double) counts[labelled.ordinal()][read.ordinal()] / Math.max(1, total(labelled));
    }

    private long total(ContactVerdict labelled) {
        long[] row = counts[labelled.ordinal()];
        return row[0] + row[1] + row[2];
    }

    /** Returns the confusion table and the rates with their 95 % Wilson intervals. */
    String report(String title) {
        StringBuilder text = new StringBuilder(title).append('\n');
        text.append(String.format("%-18s %8s %8s %8s%n", "labelled \\ read", "contact", "unclear", "none"));
        for (ContactVerdict labelled : ContactVerdict.values()) {
            long[] row = counts[labelled.ordinal()];
            text.append(String.format("%-18s %8d %8d %8d%n", labelled.word(), row[0], row[1], row[2]));
        }
        long[] contact = counts[ContactVerdict.CONTACT.ordinal()];
        long[] none = counts[ContactVerdict.NONE.ordinal()];
        text.append(rate("contact read as contact", contact[0], total(ContactVerdict.CONTACT)));
        text.append(rate("contact read as contact or unclear", contact[0] + contact[1], total(ContactVerdict.CONTACT)));
        text.append(rate("contact read as none (missed)", contact[2], total(ContactVerdict.CONTACT)));
        text.append(rate("none read as contact (false alarm)", none[0], total(ContactVerdict.NONE)));
        text.append(rate("none read as unclear (question)", none[1], total(ContactVerdict.NONE)));
        text.append("language mistaken in ").append(languageMistaken).append(" notes\n");
        return text.toString();
    }

    private static String rate(String name, long part, long all) {
        WilsonInterval interval = WilsonInterval.of(part, all);
        return String.format(
                Locale.ROOT,
                "%-36s %4d/%-4d %6.2f %%  [%.2f, %.2f]%n",
                name,
                part,
                all,
                100.0 * part / Math.max(1, all),
                100 * interval.lower(),
                100 * interval.upper());
    }
}
