package dev.lapwing.jobs.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.jobs.domain.material.TimeEstimate;
import dev.lapwing.jobs.domain.material.TubeNeed;
import dev.lapwing.jobs.storage.RecordedEvent;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

/**
 * What may touch a roof, how far it is, and what its work takes, as it is answered; times are those of the depot.
 *
 * @param waits what has to come before the work may begin
 * @param begun whether looking began after the last wash, dirt and stop
 * @param material null when no sealant is asked for
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record RoofAnswer(
        List<String> waits,
        List<Item> cleaners,
        List<Item> sealants,
        OffsetDateTime washedAt,
        OffsetDateTime readyAt,
        boolean tooDirty,
        String stopped,
        boolean begun,
        List<EventAnswer> events,
        MaterialAnswer material,
        TimeAnswer time) {

    /** A cleaner or sealant of the depot, and whether it may touch this roof now. */
    record Item(String name, boolean allowed, String because) {}

    /** Something done on the sheet. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record EventAnswer(
            UUID id,
            String kind,
            String subject,
            String words,
            OffsetDateTime at,
            OffsetDateTime recordedAt,
            String recordedBy,
            boolean byLink) {
        static EventAnswer of(RecordedEvent event, ZoneId zone) {
            return new EventAnswer(
                    event.id,
                    event.kind.word(),
                    event.subject,
                    event.words,
                    event.moment.atZone(zone).toOffsetDateTime(),
                    event.recordedAt.atZone(zone).toOffsetDateTime(),
                    event.recordedBy,
                    event.byLink);
        }
    }

    /** The arithmetic of the tubes, one step a line, in both systems of units. */
    record MaterialAnswer(
            int tubes,
            String tubeOf,
            BigDecimal beadMetres,
            BigDecimal millilitres,
            List<String> metric,
            List<String> us) {
        static MaterialAnswer of(TubeNeed need, String tubeOf) {
            return new MaterialAnswer(
                    need.tubes(),
                    tubeOf,
                    need.run().length().metres(),
                    need.withWaste().millilitres(),
                    need.metricLines(),
                    need.usLines());
        }
    }

    /** How long work of this kind takes, in minutes. */
    record TimeAnswer(
            long median, long lowerQuartile, long upperQuartile, int jobs, boolean fromOwnJobs, String words) {
        static TimeAnswer of(TimeEstimate estimate) {
            return new TimeAnswer(
                    estimate.median().toMinutes(),
                    estimate.lowerQuartile().toMinutes(),
                    estimate.upperQuartile().toMinutes(),
                    estimate.jobs(),
                    estimate.fromOwnJobs(),
                    estimate.inWords());
        }
    }
}
