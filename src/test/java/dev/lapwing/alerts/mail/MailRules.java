package dev.lapwing.alerts.mail;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.alerts.domain.PlainText;
import dev.lapwing.alerts.storage.OutboxMail;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.internet.MimeUtility;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** The rules of {@code shared/checks/mail.csv}, by their names there. */
final class MailRules {
    private static final Pattern ENCODED_WORD = Pattern.compile("=\\?[^?]+\\?[BbQq]\\?[^? ]*\\?=");

    /** One rule. */
    interface Check {
        void holds(RawMail arrived, OutboxMail mail) throws Exception;
    }

    static final Map<String, Check> BY_NAME = Map.ofEntries(
            entry("Date present", MailRules::date),
            entry("From present", (arrived, mail) -> {
                assertThat(arrived.count("From")).isEqualTo(1);
                assertThat(arrived.parsed().getFrom()).hasSize(1);
            }),
            entry("To, Subject, Reply-To not repeated", (arrived, mail) -> {
                assertThat(arrived.count("To")).isEqualTo(1);
                assertThat(arrived.count("Subject")).isEqualTo(1);
                assertThat(arrived.count("Cc") + arrived.count("Bcc") + arrived.count("Reply-To"))
                        .isZero();
            }),
            entry("Message-ID present and unique", (arrived, mail) -> {
                assertThat(arrived.count("Message-ID")).isEqualTo(1);
                assertThat(arrived.parsed().getMessageID()).isEqualTo(mail.messageId);
            }),
            entry("In-Reply-To / References on follow-ups", MailRules::thread),
            entry(
                    "Hard line limit",
                    (arrived, mail) -> assertThat(arrived.lines()).allMatch(line -> line.length() <= 998)),
            entry(
                    "Soft line limit",
                    (arrived, mail) -> assertThat(arrived.lines()).allMatch(line -> line.length() <= 78)),
            entry(
                    "CR and LF only as a pair",
                    (arrived, mail) ->
                            assertThat(arrived.text().replace("\r\n", "")).doesNotContain("\r", "\n")),
            entry("No CR LF in a header value", MailRules::noExtraHeader),
            entry(
                    "Auto-Submitted on scheduled mail",
                    (arrived, mail) -> assertThat(arrived.headerLines()).contains("Auto-Submitted: auto-generated")),
            entry(
                    "Auto-Submitted once",
                    (arrived, mail) ->
                            assertThat(arrived.count("Auto-Submitted")).isEqualTo(1)),
            entry(
                    "auto-replied only for replies",
                    (arrived, mail) ->
                            assertThat(arrived.text().toLowerCase(Locale.ROOT)).doesNotContain("auto-replied")),
            entry(
                    "Do not answer automatic mail",
                    (arrived, mail) -> assertThat(arrived.parsed().getAllRecipients())
                            .containsExactly(new InternetAddress(mail.recipient))),
            entry("Non-ASCII Subject encoded", MailRules::subject),
            entry("Encoded-word length", MailRules::encodedWordLength),
            entry("Encoded-word not split inside a character", MailRules::wholeCharacters),
            entry(
                    "MIME-Version",
                    (arrived, mail) -> assertThat(arrived.headerLines()).containsOnlyOnce("MIME-Version: 1.0")),
            entry("Content-Type with charset", MailRules::charset),
            entry(
                    "Encoded body line length",
                    (arrived, mail) -> assertThat(arrived.bodyLines()).allMatch(line -> line.length() <= 76)),
            entry("Encoding declared", MailRules::encoding));

    private MailRules() {}

    private static void date(RawMail arrived, OutboxMail mail) {
        assertThat(arrived.count("Date")).isEqualTo(1);
        String line = arrived.headerLines().stream()
                .filter(header -> header.startsWith("Date: "))
                .findFirst()
                .orElseThrow();
        var read = DateTimeFormatter.RFC_1123_DATE_TIME.parse(line.substring("Date: ".length()));
        assertThat(Instant.from(read)).isEqualTo(mail.createdAt);
    }

    private static void thread(RawMail arrived, OutboxMail mail) throws MessagingException {
        MimeMessage read = arrived.parsed();
        String[] expected = mail.inReplyTo == null ? null : new String[] {mail.inReplyTo};
        assertThat(read.getHeader("In-Reply-To")).isEqualTo(expected);
        assertThat(read.getHeader("References")).isEqualTo(expected);
    }

    private static void noExtraHeader(RawMail arrived, OutboxMail mail) throws MessagingException {
        List<String> names = arrived.headerLines().stream()
                .filter(line -> !line.startsWith(" ") && !line.startsWith("\t"))
                .map(line -> line.substring(0, line.indexOf(':')))
                .toList();
        assertThat(names)
                .isSubsetOf(
                        "Return-Path",
                        "Received",
                        "Date",
                        "From",
                        "To",
                        "Message-ID",
                        "In-Reply-To",
                        "References",
                        "Subject",
                        "MIME-Version",
                        "Content-Type",
                        "Auto-Submitted",
                        "Importance");
        InternetAddress to = (InternetAddress) arrived.parsed().getAllRecipients()[0];
        assertThat(to.getPersonal() == null ? "" : to.getPersonal()).isEqualTo(PlainText.oneLine(mail.recipientName));
    }

    private static void subject(RawMail arrived, OutboxMail mail) throws MessagingException {
        assertThat(arrived.headerLines()).allMatch(line -> line.chars().allMatch(c -> c < 128));
        assertThat(arrived.parsed().getSubject()).isEqualTo(PlainText.oneLine(mail.subject));
    }

    private static void encodedWordLength(RawMail arrived, OutboxMail mail) {
        for (String line : arrived.headerLines()) {
            var words = ENCODED_WORD.matcher(line);
            while (words.find()) {
                assertThat(words.group()).hasSizeLessThanOrEqualTo(75);
                assertThat(line).hasSizeLessThanOrEqualTo(76);
            }
        }
    }

    private static void wholeCharacters(RawMail arrived, OutboxMail mail) throws Exception {
        for (String line : arrived.headerLines()) {
            var words = ENCODED_WORD.matcher(line);
            while (words.find()) {
                String alone = MimeUtility.decodeWord(words.group());
                assertThat(alone).doesNotContain("\uFFFD");
            }
        }
    }

    private static void charset(RawMail arrived, OutboxMail mail) throws MessagingException, IOException {
        var parts = (MimeMultipart) arrived.parsed().getContent();
        assertThat(parts.getBodyPart(0).getContentType()).isEqualToIgnoringCase("text/plain; charset=UTF-8");
        assertThat(parts.getBodyPart(1).getContentType()).isEqualToIgnoringCase("text/html; charset=UTF-8");
    }

    private static void encoding(RawMail arrived, OutboxMail mail) throws MessagingException, IOException {
        assertThat(arrived.text().getBytes(StandardCharsets.ISO_8859_1)).matches(bytes -> onlyAscii(bytes));
        var parts = (MimeMultipart) arrived.parsed().getContent();
        assertThat(parts.getBodyPart(0).getContent()).isEqualTo(PlainText.lines(mail.textBody));
        assertThat(parts.getBodyPart(1).getContent()).isEqualTo(PlainText.lines(mail.htmlBody));
    }

    private static boolean onlyAscii(byte[] bytes) {
        for (byte one : bytes) {
            if (one < 0) {
                return false;
            }
        }
        return true;
    }
}
