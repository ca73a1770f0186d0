package dev.lapwing.returns;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.reading.Evidence;
import dev.lapwing.reading.EvidenceRole;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A note is cut by its evidence for the page. */
class MarkedNoteTest {
    private static final String NOTE = "hit a limb";

    private static Evidence span(int start, int end, EvidenceRole role) {
        return new Evidence(start, end, NOTE.substring(start, Math.min(end, NOTE.length())), role);
    }

    @Test
    void piecesCarryTheRoleOfTheirEvidence() {
        var pieces = MarkedNote.of(NOTE, List.of(span(6, 10, EvidenceRole.OVERHEAD), span(0, 3, EvidenceRole.CONTACT)));

        assertThat(pieces)
                .containsExactly(
                        new MarkedNote.Piece("hit", "contact"),
                        new MarkedNote.Piece(" a ", null),
                        new MarkedNote.Piece("limb", "overhead"));
    }

    @Test
    void whateverTheEvidenceThePiecesAreTheNote() {
        var overlapping = List.of(
                span(0, 5, EvidenceRole.CONTACT), span(3, 8, EvidenceRole.ROOF), span(8, 40, EvidenceRole.DAMAGE));

        String together = MarkedNote.of(NOTE, overlapping).stream()
                .map(MarkedNote.Piece::text)
                .collect(Collectors.joining());

        assertThat(together).isEqualTo(NOTE);
    }
}
