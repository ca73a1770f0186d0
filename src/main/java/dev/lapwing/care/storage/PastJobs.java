package dev.lapwing.care.storage;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskState;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Reads how long work took. */
public final class PastJobs {
    private PastJobs() {}

    /** Returns the time from start to signature of the latest jobs of a kind; those never started are left out. */
    public static List<Duration> durationsOf(TaskKind kind, int most) {
        List<Object[]> jobs = CareTask.getEntityManager()
                .createQuery("""
                        select min(s.at), t.doneAt from CareTask t, TaskStep s
                        where s.taskId = t.id and s.state = :started and t.kind = :kind and t.state = :done
                        group by t.id, t.doneAt order by t.doneAt desc
                        """, Object[].class)
                .setParameter("started", TaskState.UNDER_WAY)
                .setParameter("kind", kind)
                .setParameter("done", TaskState.DONE)
                .setMaxResults(most)
                .getResultList();
        return jobs.stream()
                .map(job -> Duration.between((Instant) job[0], (Instant) job[1]))
                .filter(took -> !took.isNegative())
                .toList();
    }
}
