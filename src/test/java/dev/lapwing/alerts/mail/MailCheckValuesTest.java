package dev.lapwing.alerts.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetup;
import dev.lapwing.alerts.storage.OutboxMail;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every rule of {@code shared/checks/mail.csv} (RFC 5322, 2045, 2047, 3834) is held by what arrived at an SMTP server
 * and by what stands in the folder, whatever people are called and whatever they wrote.
 */
class MailCheckValuesTest {
    private static final Path RULES = Path.of("shared/checks/mail.csv");

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> everyRuleHolds() throws Exception {
        List<OutboxMail> mails = HostileMails.all();
        List<RawMail> written = throughFolder(mails);
        List<RawMail> arrived = throughServer(mails);
        return rules().stream()
                .map(rule -> dynamicTest(rule, () -> {
                    MailRules.Check check = MailRules.BY_NAME.get(rule);
                    for (List<RawMail> way : List.of(written, arrived)) {
                        for (int i = 0; i < mails.size(); i++) {
                            check.holds(way.get(i), mails.get(i));
                        }
                    }
                }));
    }

    @Test
    void noRuleIsLeftOut() throws IOException {
        assertThat(MailRules.BY_NAME.keySet()).containsExactlyInAnyOrderElementsOf(rules());
    }

    @Test
    void twoMailsNeverShareAMessageIdAndARetryKeepsItsOwn() throws MailNotSent {
        var one = MailFixture.anyMail();
        var other = MailFixture.anyMail();

        assertThat(idOf(one)).isEqualTo(idOf(one)).isNotEqualTo(idOf(other));
    }

    private static String idOf(OutboxMail mail) throws MailNotSent {
        var raw = RawMail.of(MailFixture.builder().build(mail));
        return raw.headerLines().stream()
                .filter(line -> line.startsWith("Message-ID: "))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> rules() throws IOException {
        var format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var records = format.parse(Files.newBufferedReader(RULES))) {
            return records.stream()
                    .filter(record -> !isCalendar(record))
                    .map(record -> record.get("rule"))
                    .toList();
        }
    }

    private static boolean isCalendar(CSVRecord record) {
        return Set.of("RFC 5545", "RFC 5546", "RFC 6047").stream()
                .anyMatch(rfc -> record.get("rfc_section").startsWith(rfc));
    }

    private List<RawMail> throughFolder(List<OutboxMail> mails) throws Exception {
        List<RawMail> read = new ArrayList<>();
        try (var route = new FolderTransport(folder).route()) {
            for (OutboxMail mail : mails) {
                route.send(MailFixture.builder().build(mail));
                String name = mail.messageId.substring(1, mail.messageId.length() - 1) + ".eml";
                read.add(new RawMail(Files.readAllBytes(folder.resolve(name))));
            }
        }
        return read;
    }

    private static List<RawMail> throughServer(List<OutboxMail> mails) throws MailNotSent {
        var greenMail = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
        greenMail.start();
        var settings = MailFixture.server(greenMail.getSmtp().getPort());
        try (var route = new SmtpTransport(settings).route()) {
            for (OutboxMail mail : mails) {
                route.send(MailFixture.builder().build(mail));
            }
            return Stream.of(greenMail.getReceivedMessages())
                    .map(GreenMailUtil::getWholeMessage)
                    .map(text -> new RawMail(text.getBytes(StandardCharsets.ISO_8859_1)))
                    .toList();
        } finally {
            greenMail.stop();
        }
    }
}
