package loopwright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import loopwright.action.Counting;
import loopwright.action.DayChoice;
import loopwright.action.DrillLog;
import loopwright.action.KeptDrill;
import loopwright.action.PlanChoice;
import loopwright.action.PracticeChoice;
import loopwright.action.Shelf;
import loopwright.action.TodayRequest;
import loopwright.action.UserFault;
import loopwright.practice.Facility;
import loopwright.practice.Skill;
import org.junit.jupiter.api.Test;

/** What the ticks of a week send. */
class TickedBlockTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 5, 3);
    private static final Shelf.Entry ENTRY = new Shelf.Entry("a", 1, "a", "", Instant.EPOCH);

    private static PracticeChoice week() {
        PlanChoice round = new PlanChoice(
                ENTRY,
                ENTRY,
                "middle",
                new PlanChoice.Goal(79, Counting.STROKES, false, false),
                DayChoice.USUAL,
                TodayRequest.USUAL,
                "",
                List.of(),
                List.of(),
                List.of(),
                1);
        return new PracticeChoice(
                round, new PracticeChoice.Time(4, 8, 3, 3, Map.of(Facility.GREEN, 4.0)), Map.of(), Map.of(), false);
    }

    private static List<DrillLog.Block> read(LocalDate today, List<KeptDrill> kept, String... values) {
        return TickedBlock.read(List.of(values), week(), kept, today);
    }

    private static KeptDrill gate(LocalDate day) {
        return new KeptDrill("", day, "gate", 12, 10, "", Instant.EPOCH);
    }

    @Test
    void aTickCountsItsMinutesLessThoseOfADrillThatWasLogged() {
        String block = "2.start-line.15.gate.10";
        assertThat(read(MONDAY, List.of(), block).get(0))
                .extracting(DrillLog.Block::skill, DrillLog.Block::minutes)
                .containsExactly(Skill.START_LINE, 15);
        assertThat(read(MONDAY, List.of(gate(MONDAY.minusDays(3))), block)
                        .get(0)
                        .minutes())
                .isEqualTo(5);
        assertThat(read(MONDAY, List.of(gate(MONDAY.minusDays(8))), block)
                        .get(0)
                        .minutes())
                .isEqualTo(15);
        assertThat(read(MONDAY, List.of(gate(MONDAY)), "2.start-line.10.gate.10"))
                .isEmpty();
    }

    @Test
    void theSameBlockHasOneRecordingInAWeekAndAnotherInTheNext() {
        String first = read(MONDAY, List.of(), "1.pace.30").get(0).recording();
        assertThat(first).matches("[a-z0-9]{6,24}");
        assertThat(read(MONDAY.plusDays(5), List.of(), "1.pace.30").get(0).recording())
                .isEqualTo(first);
        assertThat(read(MONDAY, List.of(), "2.pace.30").get(0).recording()).isNotEqualTo(first);
        assertThat(read(MONDAY.plusDays(7), List.of(), "1.pace.30").get(0).recording())
                .isNotEqualTo(first);
    }

    @Test
    void whatNoWeekSendsIsRefused() {
        for (String bad : new String[] {"", "1.juggling.30", "1.pace", "1.pace.-3", "x.pace.30"}) {
            assertThatThrownBy(() -> read(MONDAY, List.of(), bad))
                    .isInstanceOf(UserFault.class)
                    .hasMessageContaining("no block of this week");
        }
    }
}
