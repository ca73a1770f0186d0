package dev.lapwing.alerts.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;

/** The bytes of a mail, as a test reads them. */
final class RawMail {
    private final byte[] bytes;

    RawMail(byte[] bytes) {
        this.bytes = bytes;
    }

    static RawMail of(MimeMessage message) {
        try {
            var out = new ByteArrayOutputStream();
            message.writeTo(out);
            return new RawMail(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (MessagingException e) {
            throw new IllegalStateException(e);
        }
    }

    String text() {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    List<String> lines() {
        return Arrays.asList(text().split("\r\n", -1));
    }

    /** Returns the lines of the message's own header, folded ones as they are. */
    List<String> headerLines() {
        return lines().subList(0, lines().indexOf(""));
    }

    long count(String header) {
        return headerLines().stream()
                .filter(line -> line.regionMatches(true, 0, header + ":", 0, header.length() + 1))
                .count();
    }

    /** Returns the lines of all bodies: what follows the first empty line. */
    List<String> bodyLines() {
        return lines().subList(lines().indexOf("") + 1, lines().size());
    }

    MimeMessage parsed() {
        try {
            return new MimeMessage(Session.getInstance(new Properties()), new ByteArrayInputStream(bytes));
        } catch (MessagingException e) {
            throw new IllegalStateException(e);
        }
    }
}
