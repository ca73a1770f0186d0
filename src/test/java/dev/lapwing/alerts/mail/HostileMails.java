package dev.lapwing.alerts.mail;

import dev.lapwing.alerts.storage.OutboxMail;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Mails of people and units with names that test what a header bears. */
final class HostileMails {
    private static final List<Consumer<OutboxMail>> TWISTS = List.of(
            mail -> {},
            mail -> mail.subject =
                    "Unité H-104 : inspecter le toit heurté maintenant, avant la prochaine pluie, s'il vous plaît",
            mail -> mail.subject = "Wohnmobil Größe 7: Prüfung üblicher Änderungen für Möwe ".repeat(4),
            mail -> mail.subject = "H-1\r\nBcc: x@evil.example\r\n\r\nbody",
            mail -> mail.subject = "H-1\nBcc: x@evil.example",
            mail -> mail.subject = "H-1\rBcc: x@evil.example",
            mail -> mail.subject = "😀".repeat(60),
            mail -> mail.subject = "H".repeat(190),
            mail -> mail.recipientName = "Tess \"the\" Alder\r\nBcc: x@evil.example",
            mail -> mail.recipientName = "Zoë Ångström-Łukasiewicz, née Åkerström-Sørensen of the Saltmarsh Point yard",
            mail -> mail.recipientName = "Alder, Tess <x@evil.example>",
            mail -> mail.recipientName = "😀".repeat(25),
            mail -> mail.recipientName = "",
            mail -> {
                mail.textBody = "é".repeat(3000) + "\n.\n..\nFrom here\r\nend\ralone\n";
                mail.htmlBody = "<p>" + "x".repeat(3000) + "</p>\n.\n";
            },
            mail -> mail.textBody = "oak limb\r\n\r\nBcc: x@evil.example\n\0\u0007",
            mail -> mail.inReplyTo = "<first@haldenridge.example>");

    private HostileMails() {}

    static List<OutboxMail> all() {
        return TWISTS.stream()
                .flatMap(twist -> Stream.of(MailFixture.anyMail()).peek(twist))
                .toList();
    }
}
