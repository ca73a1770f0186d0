package dev.lapwing.jobs.domain.release;

import java.time.Instant;
import java.util.List;

/**
 * Somebody wants to end a hold.
 *
 * @param signer who signs
 * @param statement what the signer states
 * @param at the moment of signing
 * @param inspections signed sheets of the unit, in any order
 * @param work signed follow-up work of the unit, in any order
 * @param answers answers to unclear readings of the unit
 */
public record ReleaseRequest(
        Hold hold,
        Signer signer,
        String statement,
        Instant at,
        List<SignedInspection> inspections,
        List<SignedWork> work,
        List<NoContact> answers) {
    public ReleaseRequest {
        inspections = List.copyOf(inspections);
        work = List.copyOf(work);
        answers = List.copyOf(answers);
    }

    /**
     * The person who signs.
     *
     * @param id as kept by the house
     * @param roles words of the person's roles, such as coordinator
     * @param active whether the person still works here
     */
    public record Signer(String id, List<String> roles, boolean active) {
        public Signer {
            roles = List.copyOf(roles);
        }
    }
}
