package dev.lapwing.people;

import dev.lapwing.platform.Secrets;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Makes and judges the links that stand in letters to techs. A link opens the sheet of its job for as long as the same
 * tech has it and it is to be done, and nothing else.
 */
@ApplicationScoped
public class JobLinks {
    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    @ConfigProperty(name = "lapwing.job-link.valid", defaultValue = "14d")
    Duration valid;

    @Inject
    JobStanding standing;

    @Inject
    Secrets secrets;

    @Inject
    Clock clock;

    /**
     * What became of a token.
     *
     * @param known whether it ever was one of ours
     * @param link the link while it opens its job, else null
     */
    record Judged(boolean known, JobLink link) {
        Optional<JobLink> opening() {
            return Optional.ofNullable(link);
        }
    }

    /** Makes a link and returns its address, which is kept nowhere else. */
    @Transactional(Transactional.TxType.MANDATORY)
    public String addressFor(UUID job, String tech) {
        String token = secrets.newToken();
        Instant now = clock.instant();
        JobLink.delete("expiresAt < ?1", now);
        var link = new JobLink();
        link.tokenHash = Secrets.hash(token);
        link.jobId = job;
        link.username = tech;
        link.madeAt = now;
        link.expiresAt = now.plus(valid);
        link.persist();
        return publicUrl + JobLinkPage.PATH + token;
    }

    /** Ends the links of a job that changed hands, also for a tech who gets it back later. */
    @Transactional(Transactional.TxType.MANDATORY)
    public void revoke(UUID job) {
        JobLink.update("revokedAt = ?1 where jobId = ?2 and revokedAt is null", clock.instant(), job);
    }

    /** Judges a token by itself. */
    @Transactional
    Judged judge(String token) {
        JobLink link = JobLink.findById(Secrets.hash(token));
        if (link == null) {
            return new Judged(false, null);
        }
        return new Judged(true, usable(link) && jobOf(link).open() ? link : null);
    }

    /**
     * Judges a token that came with a request about a job.
     *
     * @param lastAnswer whether the request signs the sheet: one whose answer was lost may come again after the job is
     *     done, and gets that answer
     */
    @Transactional
    Judged judge(String token, UUID job, boolean lastAnswer) {
        JobLink link = JobLink.findById(Secrets.hash(token));
        if (link == null || !link.jobId.equals(job)) {
            return new Judged(link != null, null);
        }
        boolean opens =
                usable(link) && (jobOf(link).open() || lastAnswer && jobOf(link).done());
        return new Judged(true, opens ? link : null);
    }

    private boolean usable(JobLink link) {
        return link.revokedAt == null
                && clock.instant().isBefore(link.expiresAt)
                && link.username.equals(jobOf(link).tech());
    }

    private JobStanding.Job jobOf(JobLink link) {
        return standing.of(link.jobId).orElse(new JobStanding.Job(null, false, false));
    }
}
