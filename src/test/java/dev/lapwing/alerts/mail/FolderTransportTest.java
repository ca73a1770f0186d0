package dev.lapwing.alerts.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.lapwing.alerts.domain.Failure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderTransportTest {
    @TempDir
    Path temporary;

    @Test
    void aMailSentTwiceIsOneFileAndNothingElseIsLeft() throws MailNotSent, IOException {
        Path folder = temporary.resolve("new/mail");
        var mail = MailFixture.anyMail();
        try (var route = new FolderTransport(folder).route()) {
            route.send(MailFixture.builder().build(mail));
            route.send(MailFixture.builder().build(mail));
        }

        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files)
                    .singleElement()
                    .extracting(Path::getFileName)
                    .hasToString(mail.id + "@haldenridge.example.eml");
        }
    }

    @Test
    void aMessageIdCannotLeadOutOfTheFolder() throws MailNotSent, IOException {
        Path folder = temporary.resolve("mail");
        var mail = MailFixture.anyMail();
        mail.messageId = "<../../up@haldenridge.example>";
        try (var route = new FolderTransport(folder).route()) {
            route.send(MailFixture.builder().build(mail));
        }

        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files)
                    .singleElement()
                    .extracting(Path::getFileName)
                    .hasToString(".._.._up@haldenridge.example.eml");
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsAnOutage() throws IOException {
        Path file = Files.createFile(temporary.resolve("file"));
        try (var route = new FolderTransport(file).route()) {
            var notSent = catchThrowableOfType(
                    MailNotSent.class, () -> route.send(MailFixture.builder().build(MailFixture.anyMail())));

            assertThat(notSent.failure()).isEqualTo(Failure.UNREACHABLE);
        }
    }
}
