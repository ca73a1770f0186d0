package dev.lapwing.alerts.mail;

import dev.lapwing.alerts.domain.Failure;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.BufferedOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Puts each mail as an .eml file into a folder.
 *
 * <p>The file is named after the Message-ID, so a mail that is written again after a crash replaces itself. It appears
 * whole or not at all: it is written under another name, forced to the disk and renamed.
 */
final class FolderTransport implements MailTransport {
    private final Path folder;

    FolderTransport(Path folder) {
        this.folder = folder;
    }

    @Override
    public Route route() {
        return new Route() {
            @Override
            public void send(MimeMessage mail) throws MailNotSent {
                try {
                    write(mail);
                } catch (IOException | MessagingException e) {
                    throw new MailNotSent(
                            Failure.UNREACHABLE, "cannot write into the folder " + folder + ": " + e.getMessage(), e);
                }
            }

            @Override
            public void close() {}
        };
    }

    private void write(MimeMessage mail) throws IOException, MessagingException {
        Files.createDirectories(folder);
        String name = fileName(mail.getMessageID());
        Path half = folder.resolve("." + name + ".part");
        try (var file = new FileOutputStream(half.toFile());
                var buffer = new BufferedOutputStream(file)) {
            mail.writeTo(buffer);
            buffer.flush();
            file.getFD().sync();
        }
        Files.move(half, folder.resolve(name), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    private static String fileName(String messageId) {
        return messageId.replaceAll("[<>]", "").replaceAll("[^A-Za-z0-9@._-]", "_") + ".eml";
    }
}
