package dev.lapwing.care.application;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.UUID;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;

/** Runs a trial of care rules that was asked for. */
@ApplicationScoped
@DisallowConcurrentExecution
class TrialJob implements Job {
    /** Id of the trial. */
    static final String RUN = "run";

    @Inject
    TryingRules trying;

    @Override
    public void execute(JobExecutionContext context) {
        trying.run(UUID.fromString(context.getMergedJobDataMap().getString(RUN)));
    }
}
