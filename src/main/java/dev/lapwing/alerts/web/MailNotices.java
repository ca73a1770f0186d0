package dev.lapwing.alerts.web;

import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.storage.OutboxList;
import dev.lapwing.web.Notices;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;

/** Tells coordinators of mails that were given up: somebody was not told what they should know. */
@ApplicationScoped
class MailNotices implements Notices {
    @Override
    @Transactional
    public List<Notice> now() {
        long givenUp = OutboxList.countIn(MailState.GIVEN_UP);
        if (givenUp == 0) {
            return List.of();
        }
        String words = givenUp == 1
                ? "A mail could not be sent and was given up: tell its reader another way."
                : givenUp + " mails could not be sent and were given up: tell their readers another way.";
        return List.of(new Notice(words, "/outbox?state=given-up", "Show them"));
    }
}
