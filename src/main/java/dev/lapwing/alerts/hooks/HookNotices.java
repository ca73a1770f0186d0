package dev.lapwing.alerts.hooks;

import dev.lapwing.web.Notices;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;

/** Tells coordinators of targets that do not answer. */
@ApplicationScoped
class HookNotices implements Notices {
    private static final int FAILURES_IN_A_ROW = 5;

    @Override
    @Transactional
    public List<Notice> now() {
        long silent = WebhookTarget.count(
                "paused = false and removedAt is null"
                        + " and id in (select p.targetId from WebhookPace p where p.failures >= ?1)",
                FAILURES_IN_A_ROW);
        if (silent == 0) {
            return List.of();
        }
        String words = silent == 1 ? "A webhook does not answer." : silent + " webhooks do not answer.";
        return List.of(new Notice(words, "/webhooks", "See why"));
    }
}
