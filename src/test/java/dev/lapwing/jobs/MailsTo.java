package dev.lapwing.jobs;

import dev.lapwing.alerts.storage.OutboxMail;
import io.quarkus.narayana.jta.QuarkusTransaction;
import java.util.List;

/** Reads what was mailed to somebody, in the order it was written. */
final class MailsTo {
    private MailsTo() {}

    /** Returns the subjects of mails about a unit's roof that stopped work or a release led to. */
    static List<String> about(String unit, String username) {
        return QuarkusTransaction.requiringNew()
                .call(() -> OutboxMail.<OutboxMail>list(
                                "recipient = ?1 and subject like ?2 and kind in (REFERRED, RELEASED) order by createdAt, id",
                                username + "@haldenridge.example",
                                "%" + unit + "%")
                        .stream()
                        .map(mail -> mail.subject)
                        .toList());
    }
}
