package dev.lapwing.jobs;

import static org.awaitility.Awaitility.await;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The link in the letter that a tech got about a unit. */
final class MailedLink {
    private static final Pattern LINK = Pattern.compile("http://localhost:8080(/job/[A-Za-z0-9_-]+)");
    private static final Path FOLDER = Path.of("target/mail");

    private MailedLink() {}

    /** Returns the path of the link, without the address of the service, once a letter with one has been written. */
    static String about(String unit, String tech) {
        return await().until(() -> find(unit, tech), Optional::isPresent).orElseThrow();
    }

    private static Optional<String> find(String unit, String tech) {
        return letters().stream()
                .map(MailedLink::read)
                .filter(letter -> letter.contains("unit " + unit) && letter.contains(tech + "@"))
                .map(LINK::matcher)
                .filter(Matcher::find)
                .map(link -> link.group(1))
                .findFirst();
    }

    private static List<Path> letters() {
        if (!Files.isDirectory(FOLDER)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".eml")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the reader's address and the plain text. */
    private static String read(Path file) {
        try (var bytes = Files.newInputStream(file)) {
            var mail = new MimeMessage(Session.getInstance(new Properties()), bytes);
            var parts = (MimeMultipart) mail.getContent();
            return mail.getHeader("To", ",") + "\n" + parts.getBodyPart(0).getContent();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (MessagingException e) {
            throw new IllegalStateException(e);
        }
    }
}
