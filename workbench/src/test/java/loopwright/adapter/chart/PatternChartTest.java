package loopwright.adapter.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.LengthUnit;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Ink;
import loopwright.drawing.Labels;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;
import loopwright.player.Club;
import loopwright.player.Evidence;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.Shot;
import loopwright.player.ShotLog;
import loopwright.player.Swing;
import org.junit.jupiter.api.Test;

class PatternChartTest {
    private static final Player ASSUMED = PlayerPrior.of(85, Player.Hand.RIGHT).player("synthetic");

    @Test
    void oneHeadingForEverySwingAndNoTextOverAnother() {
        Drawing chart = PatternChart.of(ASSUMED, ShotLog.EMPTY, LengthUnit.YARDS);
        List<Mark.Label> labels = Labels.of(chart.marks());
        for (Swing swing : ASSUMED.swings()) {
            assertThat(labels).anyMatch(l -> l.text().equals(swing.label()));
        }
        assertThat(labels).allMatch(l -> chart.sheet().grown(-12).contains(l.extent()));
        assertThat(Labels.listOverlaps(labels)).isEmpty();
        assertThat(labels.stream().filter(l -> l.text().equals("assumed")))
                .hasSize(ASSUMED.swings().size());
    }

    @Test
    void measuredIsDrawnUnbrokenAssumedDashed() {
        assertThat(outlines(20, 0.1)).isNotEmpty().allMatch(List::isEmpty);
        assertThat(outlines(20, 0.9)).isNotEmpty().noneMatch(List::isEmpty);
        // A club without a ball of its own leans on its neighbours: that is not measured.
        assertThat(outlines(0, 0.4)).isNotEmpty().noneMatch(List::isEmpty);
    }

    @Test
    void mishitsHaveAShapeOfTheirOwn() {
        Swing driver = ASSUMED.swings().get(0);
        double carry = driver.pattern().carryMetres();
        List<Shot> balls =
                List.of(Shot.onCourse(driver.club(), carry, 0), Shot.onCourse(driver.club(), 0.75 * carry, 9));
        List<Mark> marks = flat(new PatternPanel(driver, balls, LengthUnit.YARDS, 1, new Point(0, 0)).marks());
        assertThat(marks.stream()
                        .filter(m -> m instanceof Mark.Shape s
                                && s.pen() != null
                                && s.pen().ink() == Ink.BEWARE)
                        .mapToInt(m -> ((Mark.Shape) m).traces().size())
                        .sum())
                .isEqualTo(1);
    }

    @Test
    void ballsOffTheGroundAreCounted() {
        Swing driver = ASSUMED.swings().get(0);
        List<Shot> balls = List.of(Shot.onCourse(driver.club(), 30, 0), Shot.onCourse(driver.club(), 200, 70));
        assertThat(Labels.of(new PatternPanel(driver, balls, LengthUnit.YARDS, 1, new Point(0, 0)).marks()).stream()
                        .map(Mark.Label::text))
                .contains("2 off this ground");
    }

    /** A wild player's outlines stay inside their panels but for the tail of topped balls at the foot. */
    @Test
    void theGroundGrowsUntilItHoldsEveryOutline() {
        for (double level : new double[] {76, 102, 120}) {
            Player player = PlayerPrior.of(level, Player.Hand.LEFT).player("synthetic");
            double zoom = player.swings().stream()
                    .mapToDouble(s -> PatternPanel.zoomFor(s, LengthUnit.YARDS))
                    .max()
                    .orElseThrow();
            assertThat(zoom).as("level %s", level).isBetween(1.0, 1.5);
            for (Swing swing : player.swings()) {
                List<Mark> marks = new PatternPanel(swing, List.of(), LengthUnit.YARDS, zoom, new Point(0, 0)).marks();
                Mark.Window window = (Mark.Window) marks.stream()
                        .filter(Mark.Window.class::isInstance)
                        .findFirst()
                        .orElseThrow();
                Extent ground = Extent.around(window.window().points());
                for (Mark mark : window.inside()) {
                    boolean outline = mark instanceof Mark.Shape s
                            && s.pen() != null
                            && !s.pen().dashes().isEmpty();
                    if (outline) {
                        ((Mark.Shape) mark)
                                .traces()
                                .forEach(t -> assertThat(t.points())
                                        .as("%s at %s", swing.label(), level)
                                        .allMatch(p -> p.y() > ground.bottom() || ground.contains(p)));
                    }
                }
            }
        }
    }

    /** Dashes of the outlines of a driver whose pattern is assumed to this share. */
    private static List<List<Double>> outlines(int balls, double assumedShare) {
        Swing driver = ASSUMED.swings().get(0);
        Swing swing = new Swing(
                new Club("driver", Club.Family.DRIVER),
                Swing.FULL,
                driver.pattern(),
                new Evidence(balls, assumedShare));
        List<List<Double>> out = new ArrayList<>();
        for (Mark mark : flat(new PatternPanel(swing, List.of(), LengthUnit.YARDS, 1, new Point(0, 0)).marks())) {
            if (mark instanceof Mark.Shape s && s.traces().stream().anyMatch(Trace::closed)) {
                Pen pen = s.pen();
                boolean frame = s.traces().get(0).points().size() == 4;
                if (pen != null && !frame) {
                    out.add(pen.dashes());
                }
            }
        }
        return out;
    }

    private static List<Mark> flat(List<Mark> marks) {
        List<Mark> out = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Window w) {
                out.addAll(flat(w.inside()));
            } else {
                out.add(mark);
            }
        }
        return out;
    }

    @Test
    void inMetresTheGroundIsRuledAndLetteredInMetres() {
        Drawing chart = PatternChart.of(ASSUMED, ShotLog.EMPTY, LengthUnit.METRES);
        List<String> texts =
                Labels.of(chart.marks()).stream().map(Mark.Label::text).toList();
        Swing driver = ASSUMED.swings().get(0);
        assertThat(texts).contains(Math.round(driver.pattern().carryMetres()) + " m");
        assertThat(texts).noneMatch(t -> t.endsWith(" yd"));
        assertThat(texts).anyMatch(t -> t.contains("squares of 10 metres"));
        assertThat(Labels.listOverlaps(Labels.of(chart.marks()))).isEmpty();
    }

    /** The assumed slice of a left-hander goes left: the same picture in a mirror, without anybody mirroring it. */
    @Test
    void aLeftHandersPatternsAreThePictureInAMirror() {
        Player left = PlayerPrior.of(85, Player.Hand.LEFT).player("synthetic");
        for (int i = 0; i < ASSUMED.swings().size(); i++) {
            PatternDensity right = new PatternDensity(ASSUMED.swings().get(i).pattern());
            PatternDensity other = new PatternDensity(left.swings().get(i).pattern());
            double carry = ASSUMED.swings().get(i).pattern().carryMetres();
            for (double side = -40; side <= 40; side += 8) {
                double here = right.whole(0.9 * carry, side);
                // the same sums in another order
                assertThat(other.whole(0.9 * carry, -side))
                        .isCloseTo(here, org.assertj.core.api.Assertions.within(1e-9 * Math.max(here, 1e-9)));
            }
        }
    }
}
