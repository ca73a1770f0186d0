package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.mail.MailSettings;
import dev.lapwing.alerts.storage.OutboxLine;
import dev.lapwing.alerts.storage.OutboxList;
import io.smallrye.health.api.Wellness;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;

/**
 * Reports whether mails reach people. It is a matter of wellness and not of readiness: a service that cannot mail must
 * still take reports.
 */
@Wellness
@ApplicationScoped
class OutboxHealth implements HealthCheck {
    @Inject
    MailSettings settings;

    @Inject
    Clock clock;

    @Override
    @Transactional
    public HealthCheckResponse call() {
        long givenUp = OutboxList.countIn(MailState.GIVEN_UP);
        long overdue = OutboxLine.overdue(clock.instant(), settings.hourly(), settings.longestWait());
        return HealthCheckResponse.named("mails reach people")
                .withData("given up", givenUp)
                .withData("waiting longer than " + settings.longestWait().toMinutes() + " minutes", overdue)
                .status(givenUp == 0 && overdue == 0)
                .build();
    }
}
