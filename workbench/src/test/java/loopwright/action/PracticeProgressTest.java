package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import loopwright.player.DayEffect;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.PlayerProfile;
import loopwright.practice.Drill;
import loopwright.practice.DrillBook;
import loopwright.practice.LearningTable;
import loopwright.practice.Skill;
import org.junit.jupiter.api.Test;

/** Where a player stands after blocks were ticked and drills logged. */
class PracticeProgressTest {
    private static final LocalDate DAY = LocalDate.of(2027, 5, 3);
    private static final List<Drill> DRILLS = DrillBook.all(32);

    private final Player player = PlayerPrior.of(90, Player.Hand.RIGHT).player("test");
    private final PlayerProfile profile = new PlayerProfile(player, DayEffect.ASSUMED);
    private final LearningTable assumed = LearningTable.assumed(player);

    private static KeptDrill block(Skill skill, int minutes) {
        return KeptDrill.of(new DrillLog.Block("", DAY, skill, minutes), Instant.EPOCH);
    }

    private static List<KeptDrill> gates(int times, int score) {
        return Collections.nCopies(times, new KeptDrill("", DAY, "gate", score, 10, "", Instant.EPOCH));
    }

    private PracticeProgress after(List<KeptDrill> done) {
        return PracticeProgress.of(profile, done, DRILLS, assumed);
    }

    @Test
    void whoHasDoneNothingStandsWhereHisFileSays() {
        PracticeProgress none = after(List.of());
        assertThat(none.lines()).isEmpty();
        assertThat(none.habitShare()).isEqualTo(1);
        assertThat(none.of(profile).player()).isEqualTo(player);
        assertThat(none.curves(assumed)).isEqualTo(assumed);
    }

    @Test
    void tickedHoursBringWhatTheCurveForetells() {
        PracticeProgress done = after(List.of(block(Skill.PACE, 240), block(Skill.DECISIONS, 120)));
        double pace = assumed.get(Skill.PACE).left(4);
        assertThat(done.left(Skill.PACE)).isCloseTo(pace, within(1e-12));
        assertThat(done.lines()).allSatisfy(l -> assertThat(l.playings()).isZero());
        assertThat(done.of(profile).player().putting().paceSd())
                .isCloseTo(pace * player.putting().paceSd(), within(1e-12));
        assertThat(done.habitShare()).isCloseTo(assumed.get(Skill.DECISIONS).left(2), within(1e-12));
    }

    /** Of playing the plan two more hours, from where two have led, come out where four lead. */
    @Test
    void hoursOnThePlanGoOnFromTheHoursBefore() {
        PracticeProgress done = after(List.of(block(Skill.DECISIONS, 120)));
        double more = done.curves(assumed).get(Skill.DECISIONS).left(2);
        assertThat(done.habitShare() * more)
                .isCloseTo(assumed.get(Skill.DECISIONS).left(4), within(1e-12));
    }

    @Test
    void drillsCorrectWhatIsForetoldTheMoreOftenTheyArePlayed() {
        double foretold = after(List.of(block(Skill.START_LINE, 40))).left(Skill.START_LINE);
        double few = after(gates(1, 20)).left(Skill.START_LINE);
        double more = after(gates(4, 20)).left(Skill.START_LINE);
        assertThat(few).isLessThan(foretold);
        assertThat(more).isLessThan(few);
        PracticeProgress.Line line = after(gates(4, 20)).lines().get(0);
        assertThat(line.playings()).isEqualTo(4);
        assertThat(line.hours()).isCloseTo(40 / 60.0, within(1e-12));
        assertThat(line.low()).isLessThan(line.left());
        assertThat(line.high()).isGreaterThan(line.left());
    }

    @Test
    void ticksAreNoDrillThatWasForgotten() {
        List<KeptDrill> kept = new ArrayList<>(gates(1, 12));
        kept.add(block(Skill.CHIP, 30));
        assertThat(PracticeReview.unknown(kept, DRILLS)).isEmpty();
    }
}
