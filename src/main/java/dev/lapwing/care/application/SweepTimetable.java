package dev.lapwing.care.application;

import dev.lapwing.care.storage.SweepRun;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.DepotSaved;
import dev.lapwing.fleet.imports.TableImported;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.LocalTime;
import java.util.Objects;
import java.util.TimeZone;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.quartz.CronScheduleBuilder;
import org.quartz.CronTrigger;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.JobKey;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.quartz.TriggerBuilder;
import org.quartz.TriggerKey;

/**
 * Keeps a nightly sweep for each depot at its local time, and runs sweeps that are asked for. The triggers live in the
 * database: one that was missed while the service was down fires once when it is back.
 */
@ApplicationScoped
public class SweepTimetable {
    private static final Logger LOG = Logger.getLogger(SweepTimetable.class);
    private static final String GROUP = "sweep";
    private static final int AFTER_THE_DEMO = 200;

    @ConfigProperty(name = "lapwing.sweep.at", defaultValue = "02:30")
    LocalTime at;

    @Inject
    Scheduler scheduler;

    @Inject
    Sweeping sweeping;

    @Transactional
    void start(@Observes @Priority(AFTER_THE_DEMO) StartupEvent event) throws SchedulerException {
        for (Depot depot : Depot.byName()) {
            keepNightly(depot);
        }
    }

    void depotSaved(@Observes DepotSaved saved) throws SchedulerException {
        keepNightly(Depot.findById(saved.code()));
    }

    /** Plans the work that imported units and rentals ask for, so that nobody has to wait for the night. */
    @Transactional
    void tableImported(@Observes TableImported imported) throws SchedulerException {
        if (imported.accepted() > 0) {
            ask(null, SweepRun.Cause.IMPORT, imported.by());
        }
    }

    /** Starts a sweep of a depot, or of all when null, and returns its run at once. */
    @Transactional
    public SweepRun ask(String depotCode, SweepRun.Cause cause, String by) throws SchedulerException {
        SweepRun run = sweeping.begin(depotCode, cause, by);
        SweepRun.flush();
        JobDetail job = JobBuilder.newJob(SweepJob.class)
                .withIdentity("asked " + run.id, GROUP)
                .usingJobData(SweepJob.RUN, run.id.toString())
                .requestRecovery()
                .build();
        scheduler.scheduleJob(job, TriggerBuilder.newTrigger().startNow().build());
        return run;
    }

    /** Leaves a trigger alone that is right already, since it may carry a night that was missed. */
    private void keepNightly(Depot depot) throws SchedulerException {
        var key = new TriggerKey("nightly " + depot.code, GROUP);
        String cron = "0 " + at.getMinute() + " " + at.getHour() + " * * ?";
        if (scheduler.getTrigger(key) instanceof CronTrigger kept
                && kept.getCronExpression().equals(cron)
                && Objects.equals(kept.getTimeZone().getID(), depot.zone)) {
            return;
        }
        JobDetail job = JobBuilder.newJob(SweepJob.class)
                .withIdentity(new JobKey("nightly " + depot.code, GROUP))
                .usingJobData(SweepJob.DEPOT, depot.code)
                .requestRecovery()
                .storeDurably()
                .build();
        CronTrigger trigger = TriggerBuilder.newTrigger()
                .withIdentity(key)
                .forJob(job)
                .withSchedule(CronScheduleBuilder.cronSchedule(cron)
                        .inTimeZone(TimeZone.getTimeZone(depot.zone))
                        .withMisfireHandlingInstructionFireAndProceed())
                .build();
        scheduler.addJob(job, true);
        if (scheduler.checkExists(key)) {
            scheduler.rescheduleJob(key, trigger);
        } else {
            scheduler.scheduleJob(trigger);
        }
        LOG.debugf("Nightly sweep of %s at %s %s", depot.code, at, depot.zone);
    }
}
