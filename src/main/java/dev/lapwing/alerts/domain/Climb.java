package dev.lapwing.alerts.domain;

import dev.lapwing.care.domain.TaskState;
import dev.lapwing.platform.Worded;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A time in which nobody has a strike as they should, so that the ladder is climbed.
 *
 * @param number place in the log of the task of the step that began it; names the climb for good
 * @param reason what is wanting
 * @param from since when people wait: the report, or the acceptance
 * @param since when the climb begins; may lie ahead
 */
public record Climb(int number, Reason reason, Instant from, Instant since) {

    /** What is wanting. */
    public enum Reason implements Worded {
        NOT_ACCEPTED("not accepted"),
        NOT_STARTED("accepted, not started");

        private final String word;

        Reason(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /** One step in the log of a task; {@code position} counts from 0. */
    public record Moment(int position, Instant at, TaskState state) {}

    /**
     * Returns the climb that a task is in. Handing an unaccepted task from one tech to the next does not begin a new
     * one, or the ladder could be kept waiting for ever; handing on one that was accepted does.
     *
     * @param log the steps of the task in order, at least one
     * @return the climb, or empty when someone is at work or nothing is left to do
     */
    public static Optional<Climb> of(List<Moment> log, LadderPace pace) {
        Moment last = log.get(log.size() - 1);
        return switch (last.state()) {
            case PLANNED, ASSIGNED -> {
                Moment first = first(log, List.of(TaskState.PLANNED, TaskState.ASSIGNED));
                yield Optional.of(new Climb(first.position(), Reason.NOT_ACCEPTED, first.at(), first.at()));
            }
            case ACCEPTED -> {
                Moment first = first(log, List.of(TaskState.ACCEPTED));
                yield Optional.of(new Climb(
                        first.position(),
                        Reason.NOT_STARTED,
                        first.at(),
                        first.at().plus(pace.start())));
            }
            case UNDER_WAY, DONE, CALLED_OFF -> Optional.empty();
        };
    }

    /** Returns the first of the steps at the end of the log that are all in these states. */
    private static Moment first(List<Moment> log, List<TaskState> states) {
        int at = log.size() - 1;
        while (at > 0 && states.contains(log.get(at - 1).state())) {
            at--;
        }
        return log.get(at);
    }
}
