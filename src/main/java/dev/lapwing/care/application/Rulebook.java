package dev.lapwing.care.application;

import dev.lapwing.care.domain.CareRules;
import dev.lapwing.care.domain.DueEngine;
import dev.lapwing.care.domain.RuleCheck;
import dev.lapwing.care.domain.RuleFile;
import dev.lapwing.care.storage.RulesEdition;
import dev.lapwing.fleet.Surface;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * Knows the care rules in force. They are kept in the database, one edition after the other: the file gives the first
 * one, and the next ones too until a person adopts rules; from then on what was adopted outranks the file. Whoever asks
 * gets the latest edition, also when another node has adopted it.
 */
@ApplicationScoped
public class Rulebook {
    private static final Logger LOG = Logger.getLogger(Rulebook.class);
    private static final int BEFORE_EVERYTHING = 10;
    private static final String THE_SERVICE = "the service";

    /** An edition, read. */
    public record Edition(int number, CareRules rules, DueEngine engine) {}

    @ConfigProperty(name = "lapwing.care.rules", defaultValue = "shared/care/rules.json")
    Path file;

    @Inject
    Clock clock;

    private volatile Edition latest;

    /** Takes the file in, and refuses to start when it cannot be used or is not told apart from rules once in force. */
    void start(@Observes @Priority(BEFORE_EVERYTHING) StartupEvent event) {
        inForce();
    }

    /** Reads and checks rules. */
    public CareRules read(String json) {
        Set<String> surfaces =
                Arrays.stream(Surface.values()).map(Surface::word).collect(Collectors.toSet());
        return RuleFile.read(json, surfaces);
    }

    public DueEngine engine() {
        return inForce().engine();
    }

    /** Returns the edition in force. */
    public Edition inForce() {
        return QuarkusTransaction.joiningExisting().call(() -> {
            Edition known = latest == null ? openWithFile() : latest;
            int number = RulesEdition.latestNumber();
            if (known.number() != number) {
                known = edition(RulesEdition.require(number));
            }
            latest = known;
            return known;
        });
    }

    /** Returns what keeps rules from following those in force: changes without a new version. */
    public List<String> objections(CareRules candidate) {
        return QuarkusTransaction.joiningExisting().call(() -> objections(history(), candidate));
    }

    private static List<String> objections(List<CareRules> history, CareRules candidate) {
        var objections = new ArrayList<>(RuleCheck.unversionedChanges(history.get(history.size() - 1), candidate));
        if (objections.isEmpty()) {
            objections.addAll(RuleCheck.changedUnderTheirVersion(history, candidate));
        }
        return objections;
    }

    private List<CareRules> history() {
        return RulesEdition.inOrder().stream().map(kept -> read(kept.content)).toList();
    }

    private Edition openWithFile() {
        String content = fileContent();
        CareRules inFile = read(content);
        if (RulesEdition.latestNumber() == 0) {
            keep(1, content, "the file at the first start");
        } else {
            compare(inFile, content);
        }
        return edition(RulesEdition.require(RulesEdition.latestNumber()));
    }

    private void compare(CareRules inFile, String content) {
        List<CareRules> history = history();
        if (history.contains(inFile)) {
            return;
        }
        List<String> objections = objections(history, inFile);
        if (!objections.isEmpty()) {
            throw new IllegalStateException(
                    "the care rules " + file + " cannot be used: " + String.join("; ", objections));
        }
        if (RulesEdition.require(history.size()).fromFile) {
            keep(history.size() + 1, content, "the file was changed");
        } else {
            LOG.warnf("The care rules of %s are not in force: others were adopted. Try them on the page first.", file);
        }
    }

    private void keep(int number, String content, String reason) {
        var edition = new RulesEdition();
        edition.number = number;
        edition.content = content;
        edition.fromFile = true;
        edition.adoptedAt = clock.instant();
        edition.adoptedBy = THE_SERVICE;
        edition.reason = reason;
        edition.keep();
    }

    private Edition edition(RulesEdition kept) {
        CareRules rules = read(kept.content);
        return new Edition(kept.number, rules, new DueEngine(rules));
    }

    private String fileContent() {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the care rules " + file + " cannot be read", e);
        }
    }
}
