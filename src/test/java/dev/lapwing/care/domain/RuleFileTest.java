package dev.lapwing.care.domain;

import static dev.lapwing.care.domain.CareFixture.RULES;
import static dev.lapwing.care.domain.CareFixture.SURFACES;
import static dev.lapwing.care.domain.CareFixture.rulesJson;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleFileTest {
    @Test
    void theDefaultRulesCanBeUsedAndEachNamesItsSource() {
        assertThat(RuleCheck.problems(RULES)).isEmpty();
        assertThat(RULES.all())
                .hasSize(10)
                .allSatisfy(rule -> assertThat(rule.source()).isNotBlank());
        assertThat(RULES.combineDays()).isEqualTo(30);
    }

    @ParameterizedTest(name = "{1} for {0}: {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "every": "91 days"            | "every": "often"              | rules[0] (full-time).every must read like '91 days' or '3 months'
            "every": "91 days"            | "every": "0 days"             | rules[0] (full-time).every must count at least 1
            "every": "91 days"            | "evry": "91 days"             | rules[0] (full-time).evry is not a field of this rule
            "every": "91 days"            | "every": 91                   | rules[0] (full-time).every must be a text
            "every": "91 days"            | "every": "30 days"            | full-time: every must be longer than combineWithin
            "every": "91 days"            | "every": "4 months"           | full-time: every and lateAfter together leave fewer than 3
            "every": "91 days"            | "every": "91 days", "every": "92 days" | Duplicate field 'every'
            "pattern": "full-time"        | "pattern": "always"           | rules[0] (full-time).pattern must be one of [full-time, seasonal, unknown]
            "pattern": "full-time"        | "pattern": "seasonal"         | seasonal units are inspected at opening and closing
            "pattern": "full-time"        | "pattern": "unknown"          | unknown use is cared for as full-time
            "kind": "inspection"          | "kind": "touch-up"            | an interval rule is for wash or inspection
            "version": 1                  | "version": 0                  | full-time: needs a version of at least 1
            "version": 1                  | "version": "one"              | rules[0] (full-time).version must be a whole number
            "type": "interval"            | "type": "sometimes"           | rules[0] (full-time).type must be one of interval, opening
            "type": "opening"             | "type": "closing"             | there must be exactly one rule of type opening, found 0
            "combineWithin": "30 days"    | "combineWithin": "1 month"    | file.combineWithin must be in days
            "combineWithin": "30 days"    | "combineWithin": "45 days"    | one inspection serves
            "opensBefore": "28 days"      | "opensBefore": "31 days"      | season-opening: opensBefore must not exceed combineWithin
            "within": "at once"           | "within": "2 days"            | strike: a strike is due at once
            "event": "storm"              | "event": "interval"           | 'interval' is not an event
            "underTrees": true            | "surfaces": ["grass"]         | names 'grass', which is not a surface
            "underTrees": true            | "underTrees": "yes"           | must be true or false
            "id": "storm"                 | "id": "strike"                | strike: is there twice
            """)
    void whatIsWrongIsNamedWithItsPlace(String right, String wrong, String problem) {
        String json = rulesJson().replaceFirst(Pattern.quote(right), wrong);
        assertThat(json).isNotEqualTo(rulesJson());

        assertThatThrownBy(() -> RuleFile.read(json, SURFACES))
                .isInstanceOf(BadRules.class)
                .hasMessageContaining(problem);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"{", "[]", "{} {}", "''", "null", "{\"rules\": 3}"})
    void whatIsNoRuleFileIsRefused(String text) {
        assertThatThrownBy(() -> RuleFile.read(text, SURFACES)).isInstanceOf(BadRules.class);
    }

    @Test
    void everyProblemIsNamedInOnePass() {
        String json = rulesJson().replace("91 days", "often").replace("at once", "soon");

        assertThatThrownBy(() -> RuleFile.read(json, SURFACES))
                .isInstanceOfSatisfying(
                        BadRules.class, bad -> assertThat(bad.problems()).hasSize(2));
    }

    @Test
    void fullTimeRuleWithoutConditionsIsNeeded() {
        String json = rulesJson()
                .replaceFirst("\"every\": \"91 days\"", "\"when\": {\"storedOutside\": true}, \"every\": \"91 days\"");

        assertThatThrownBy(() -> RuleFile.read(json, SURFACES))
                .hasMessageContaining("full-time inspection rule without conditions");
    }

    @Test
    void threeAYearIsAllowedWhenNoLatenessIs() {
        String json = rulesJson()
                .replaceFirst("\"every\": \"91 days\"", "\"every\": \"121 days\"")
                .replaceFirst("\"lateAfter\": \"14 days\"", "\"lateAfter\": \"0 days\"");

        assertThat(RuleFile.read(json, SURFACES).intervals().get(0).every()).isEqualTo(Every.days(121));
    }

    @Test
    void changeWithoutANewVersionIsFound() {
        CareRules sameVersion = RuleFile.read(rulesJson().replaceFirst("\"91 days\"", "\"85 days\""), SURFACES);
        CareRules newVersion = RuleFile.read(
                rulesJson().replaceFirst("\"91 days\"", "\"85 days\"").replaceFirst("\"version\": 1", "\"version\": 2"),
                SURFACES);

        assertThat(RuleCheck.unversionedChanges(RULES, sameVersion))
                .isEqualTo(List.of("full-time: changed, so its version must be above 1"));
        assertThat(RuleCheck.unversionedChanges(RULES, newVersion)).isEmpty();
        assertThat(RuleCheck.unversionedChanges(RULES, RULES)).isEmpty();
    }

    @Test
    void aVersionThatWasOnceInForceKeepsItsContent() {
        CareRules second = RuleFile.read(fullTimeEvery(85, 2), SURFACES);
        CareRules third = RuleFile.read(fullTimeEvery(80, 3), SURFACES);
        CareRules secondWithOtherContent = RuleFile.read(fullTimeEvery(84, 2), SURFACES);

        assertThat(RuleCheck.changedUnderTheirVersion(List.of(RULES, second, third), secondWithOtherContent))
                .isEqualTo(List.of(
                        "full-time: version 2 was in force with another content, so the version must be a new one"));
        assertThat(RuleCheck.changedUnderTheirVersion(List.of(RULES, second), third))
                .isEmpty();
    }

    private static String fullTimeEvery(int days, int version) {
        return rulesJson()
                .replaceFirst("\"91 days\"", "\"" + days + " days\"")
                .replaceFirst("\"version\": 1", "\"version\": " + version);
    }

    @Test
    void aProblemNamesTheLineOfItsField() {
        String json = rulesJson().replace("\"at once\"", "\"2 days\"").replace("\"underTrees\"", "\"underTree\"");

        assertThatThrownBy(() -> RuleFile.read(json, SURFACES))
                .isInstanceOfSatisfying(
                        BadRules.class,
                        bad -> assertThat(bad.found()).singleElement().satisfies(problem -> {
                            assertThat(problem.field()).isEqualTo("underTree");
                            assertThat(problem.line()).isEqualTo(lineOf(json, "underTree"));
                        }));
        String late = rulesJson().replace("\"at once\"", "\"2 days\"");
        assertThatThrownBy(() -> RuleFile.read(late, SURFACES))
                .isInstanceOfSatisfying(
                        BadRules.class,
                        bad -> assertThat(bad.found().get(0).line()).isEqualTo(lineOf(late, "\"id\": \"strike\"") - 1));
    }

    private static int lineOf(String json, String text) {
        return (int) json.substring(0, json.indexOf(text) + 1).lines().count();
    }
}
