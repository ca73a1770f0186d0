package dev.lapwing.care.application;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.UUID;
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

    @Inject
    Sweeping sweeping;

    @Override
    public void execute(JobExecutionContext context) {
        JobDataMap data = context.getMergedJobDataMap();
        UUID run = data.containsKey(RUN)
                ? UUID.fromString(data.getString(RUN))
                : sweeping.begin(data.getString(DEPOT), "nightly").id;
        sweeping.run(run);
    }
}
