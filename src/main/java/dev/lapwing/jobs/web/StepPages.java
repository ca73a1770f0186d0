package dev.lapwing.jobs.web;

import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import dev.lapwing.web.Pages;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Does what a form asks for and goes back to its page, which says what was done, or what was not and why. */
@ApplicationScoped
class StepPages {
    @Inject
    Pages pages;

    @Inject
    SheetAnswers answers;

    Response does(String back, Supplier<String> act) {
        try {
            return pages.go(back, act.get());
        } catch (Refused refused) {
            return notDone(back, refused);
        }
    }

    /**
     * Does what a form of a sheet's part asks for; to the script of the sheet it answers the sheet as it is then.
     *
     * @param path the part's path, with what was typed it tells one entry from another
     */
    Response onSheet(UUID task, String place, Sent sent, Supplier<String> act) {
        return answers.forScript()
                ? answers.toScript(task, sent.fingerprint(), act)
                : does("/tasks/" + task + "/sheet" + place, act);
    }

    /** Ends the work of a sheet like {@link #onSheet}. By the link of a mail the answer is the sheet itself. */
    Response endsSheet(UUID task, Sent sent, Supplier<String> act) {
        if (answers.forScript() || !answers.byLink()) {
            return onSheet(task, "", sent, act);
        }
        try {
            return answers.ended(task, act.get());
        } catch (Refused refused) {
            return notDone("/tasks/" + task + "/sheet", refused);
        }
    }

    private Response notDone(String back, Refused refused) {
        return switch (refused.kind()) {
            case INVALID, CONFLICT -> pages.goRefused(back, "Nothing was noted. " + words(refused));
            default -> throw refused;
        };
    }

    /** What a form sent: the path it was sent to and what was typed, in the form's order. */
    record Sent(String path, String... typed) {
        String fingerprint() {
            return Secrets.hash(path
                    + Arrays.stream(typed)
                            .map(text -> text == null ? "|" : "|" + text.length() + ":" + text)
                            .collect(Collectors.joining()));
        }
    }

    private static String words(Refused refused) {
        return refused.errors().isEmpty()
                ? refused.getMessage()
                : refused.errors().stream()
                        .map(error -> label(error.field()) + " " + error.message())
                        .collect(Collectors.joining("; "));
    }

    private static String label(String field) {
        return switch (field) {
            case "cleaner" -> "The cleaner";
            case "sealant" -> "The sealant";
            case "makerStatement" -> "The maker's statement";
            case "washedAt" -> "The end of the wash";
            case "why", "reason" -> "The reason";
            case "by" -> "Your name";
            case "system" -> "The system";
            case "confirmedBy" -> "Who confirmed it";
            case "confirmedOn" -> "The day";
            case "source" -> "The source";
            case "choice" -> "The choice";
            case "words" -> "How it was treated";
            case "held" -> "Whether the test held";
            default -> field;
        };
    }
}
