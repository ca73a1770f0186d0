package dev.lapwing.people;

import java.util.Optional;
import java.util.UUID;

/** Knows how a job stands for which a link was made. */
public interface JobStanding {
    /**
     * A job.
     *
     * @param tech sign-in name of who has it, or null
     * @param open whether it is still to be done
     * @param done whether it was done, and not called off
     */
    record Job(String tech, boolean open, boolean done) {}

    /** Returns the job, or empty when there is none. */
    Optional<Job> of(UUID id);
}
