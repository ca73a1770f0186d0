package dev.lapwing.care.application;

import dev.lapwing.care.storage.SweepRun;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.text.ParseException;
import java.util.Date;
import java.util.UUID;
import org.quartz.CronExpression;
import org.quartz.CronTrigger;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobDataMap;
import org.quartz.JobExecutionContext;

/** Runs a sweep when its time has come: a depot's nightly one, or one that was asked for. */
@ApplicationScoped
@DisallowConcurrentExecution
class SweepJob implements Job {
    /** Code of the depot, of a nightly sweep. */
    static final String DEPOT = "depot";
    /** Id of the run, of a sweep that was asked for. */
    static final String RUN = "run";

    private static final String THE_SERVICE = "the service";

    @Inject
    Sweeping sweeping;

    @Override
    public void execute(JobExecutionContext context) {
        JobDataMap data = context.getMergedJobDataMap();
        UUID run = data.containsKey(RUN)
                ? UUID.fromString(data.getString(RUN))
                : beginNightly(data.getString(DEPOT), context);
        sweeping.run(run);
    }

    private UUID beginNightly(String depot, JobExecutionContext context) {
        sweeping.endCutOff(depot);
        return sweeping.begin(depot, onTime(context) ? SweepRun.Cause.NIGHTLY : SweepRun.Cause.CAUGHT_UP, THE_SERVICE)
                .id;
    }

    /** A trigger that was missed fires when the service is back, which is not a time of its timetable. */
    private static boolean onTime(JobExecutionContext context) {
        if (!(context.getTrigger() instanceof CronTrigger trigger)) {
            return false;
        }
        return satisfies(trigger, context.getScheduledFireTime());
    }

    private static boolean satisfies(CronTrigger trigger, Date scheduled) {
        try {
            var timetable = new CronExpression(trigger.getCronExpression());
            timetable.setTimeZone(trigger.getTimeZone());
            return timetable.isSatisfiedBy(scheduled);
        } catch (ParseException impossible) {
            throw new IllegalStateException("stored trigger " + trigger.getKey() + " has no valid times", impossible);
        }
    }
}
