package ribmark.signing;

import static org.assertj.core.api.Assertions.assertThat;
import static ribmark.testing.Watched.LEG_LINE;
import static ribmark.testing.Watched.READY;
import static ribmark.testing.Watched.place;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ribmark.basics.Side;
import ribmark.blocksheet.BlockSheet;
import ribmark.competence.Mark;
import ribmark.testing.Watched;

class StepEvidenceTest {

    @Test
    void a_closed_sheet_is_evidence_for_each_step_marked_on_it() {
        try (Watched college = new Watched()) {
            college.closed(
                    "Ada",
                    "Maeve",
                    27,
                    Map.of(place(LEG_LINE, Side.LEFT), Mark.UNAIDED, place(LEG_LINE, Side.RIGHT), Mark.PROMPTED));
            List<BlockSheet> closed =
                    college.app.app.sheets().closedOf(college.apprentice("Ada").id());

            var evidence = StepEvidence.of(closed, LEG_LINE, ZoneOffset.UTC);

            assertThat(evidence).hasSize(1);
            assertThat(evidence.get(0).marks()).isEqualTo(Map.of(Side.LEFT, Mark.UNAIDED, Side.RIGHT, Mark.PROMPTED));
            assertThat(evidence.get(0).closedOn()).isEqualTo(LocalDate.of(2026, 11, 25));
            assertThat(StepEvidence.of(closed, READY, ZoneOffset.UTC)).isEmpty();
        }
    }
}
