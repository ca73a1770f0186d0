package dev.lapwing.jobs.web;

import dev.lapwing.platform.Refused;
import dev.lapwing.web.Pages;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Does what a form asks for and goes back to its page, which says what was done, or what was not and why. */
@ApplicationScoped
class StepPages {
    @Inject
    Pages pages;

    Response does(String back, Supplier<String> act) {
        try {
            return pages.go(back, act.get());
        } catch (Refused refused) {
            return switch (refused.kind()) {
                case INVALID, CONFLICT -> pages.goRefused(back, "Nothing was noted. " + words(refused));
                default -> throw refused;
            };
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
