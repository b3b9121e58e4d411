package loopwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a name is put that should not lie on lines. */
class LetteringTest {
    private static final Extent SHEET = new Extent(0, 0, 400, 400);
    private static final Point MIDDLE = new Point(200, 200);

    private static void name(Lettering lettering) {
        lettering.apart("7-iron +0.10", MIDDLE, 7, 9, Face.ITALIC, Ink.LINE);
    }

    private static Mark.Label only(Lettering lettering) {
        List<Mark.Label> labels = Labels.of(lettering.texts());
        assertThat(labels).hasSize(1);
        return labels.get(0);
    }

    @Test
    void aNameStandsBesideItsPointWhereNoLineRuns() {
        Lettering lettering = new Lettering(SHEET);
        name(lettering);
        assertThat(only(lettering).at().x()).isEqualTo(207);
        assertThat(lettering.texts()).hasSize(1);
    }

    @Test
    void aNameStandsClearOfTheLinesRoundItsPointAndALeaderJoinsThem() {
        Lettering lettering = new Lettering(SHEET);
        Trace inner = Trace.circle(MIDDLE, 22);
        Trace outer = Trace.circle(MIDDLE, 40);
        lettering.avoid(inner);
        lettering.avoid(outer);
        name(lettering);
        Extent letters = only(lettering).extent();
        assertThat(inner.points()).noneMatch(letters::contains);
        assertThat(outer.points()).noneMatch(letters::contains);
        Mark.Shape leader = (Mark.Shape) lettering.texts().get(1);
        List<Point> ends = leader.traces().get(0).points();
        // The leader begins at the rim of the mark, which is 7 points wide, and ends 1.5 points before the letters.
        assertThat(ends.get(0).distanceTo(MIDDLE)).isLessThan(7);
        assertThat(letters.grown(2).contains(ends.get(1))).isTrue();
    }

    @Test
    void aNameKeepsOffAnAreaFullOfSmallMarks() {
        Lettering lettering = new Lettering(SHEET);
        lettering.avoidInside(List.of(Trace.rectangle(new Extent(205, 0, 400, 400))));
        name(lettering);
        assertThat(only(lettering).extent().right()).isLessThan(205);
    }

    @Test
    void aLeaderNeverCrossesWhatIsWritten() {
        Lettering lettering = new Lettering(SHEET);
        lettering.avoid(Trace.circle(MIDDLE, 30));
        Extent above = new Extent(150, 140, 250, 190);
        lettering.keepFree(above);
        name(lettering);
        assertThat(only(lettering).extent().centre().y()).isGreaterThan(190);
    }

    @Test
    void aNameAppearsWhereNothingIsClear() {
        Lettering lettering = new Lettering(SHEET);
        lettering.keepFree(SHEET);
        name(lettering);
        assertThat(only(lettering).text()).isEqualTo("7-iron +0.10");
    }
}
