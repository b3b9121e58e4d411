package loopwright.adapter.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.action.LengthUnit;
import loopwright.action.PracticePictures.DrillCard;
import loopwright.action.PracticePictures.Expected;
import loopwright.action.ReadLengths;
import loopwright.drawing.Drawing;
import loopwright.drawing.Ink;
import loopwright.drawing.Labels;
import loopwright.drawing.Mark;
import loopwright.drawing.Point;
import loopwright.player.Player;
import loopwright.practice.Drill;
import loopwright.practice.DrillBook;
import org.junit.jupiter.api.Test;

class DrillChartTest {
    private static Drawing chart(Drill drill, Player.Hand hand) {
        Expected some = new Expected(5, 3, 7);
        return DrillChart.of(new DrillCard(drill, "synthetic", hand, some, "another", some));
    }

    /** Corners of the soles: the only closed shapes of six corners in this ink. */
    private static List<Point> soles(Drawing chart) {
        return chart.marks().stream()
                .filter(m -> m instanceof Mark.Shape s
                        && s.pen() != null
                        && s.pen().ink() == Ink.SOFT
                        && s.traces().get(0).closed()
                        && s.traces().get(0).points().size() == 6)
                .flatMap(m -> ((Mark.Shape) m).traces().get(0).points().stream())
                .sorted(Comparator.comparingDouble(Point::y).thenComparingDouble(Point::x))
                .toList();
    }

    private static Drill withALine() {
        return DrillBook.all(30).stream()
                .filter(d -> d.stations().size() == 1
                        && !soles(chart(d, Player.Hand.RIGHT)).isEmpty())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLeftHanderStandsOnTheOtherSideOfTheBall() {
        Drill drill = withALine();
        double middle = chart(drill, Player.Hand.RIGHT).width() / 2;
        List<Point> right = soles(chart(drill, Player.Hand.RIGHT));
        List<Double> mirrored = soles(chart(drill, Player.Hand.LEFT)).stream()
                .map(p -> 2 * middle - p.x())
                .sorted()
                .toList();
        assertThat(right).hasSize(12).allMatch(p -> p.x() < middle);
        List<Double> own = right.stream().map(Point::x).sorted().toList();
        for (int i = 0; i < own.size(); i++) {
            assertThat(mirrored.get(i)).isCloseTo(own.get(i), within(1e-9));
        }
    }

    @Test
    void noTextLiesOverAnotherWhateverTheHand() {
        for (Drill drill : DrillBook.all(30)) {
            for (Player.Hand hand : Player.Hand.values()) {
                assertThat(Labels.listOverlaps(Labels.of(chart(drill, hand).marks())))
                        .as(drill.name() + ", " + hand.name().toLowerCase(Locale.ROOT))
                        .isEmpty();
            }
        }
    }

    @Test
    void aReaderOfMetresReadsNoYards() {
        ReadLengths metres = new ReadLengths(LengthUnit.METRES, true);
        Expected some = new Expected(5, 3, 7);
        for (Drill drill : DrillBook.all(30)) {
            DrillCard usual = new DrillCard(drill, "synthetic", Player.Hand.RIGHT, some, "another", some);
            Drawing told = DrillChart.of(usual.told(metres));
            assertThat(words(told)).as(drill.name()).doesNotContainPattern("\\d (yd|ft)\\b");
            assertThat(Labels.listOverlaps(Labels.of(told.marks())))
                    .as(drill.name())
                    .isEmpty();
            assertThat(words(DrillChart.of(usual.told(ReadLengths.USUAL)))).isEqualTo(words(DrillChart.of(usual)));
        }
    }

    private static String words(Drawing chart) {
        return chart.marks().stream()
                .filter(m -> m instanceof Mark.Label)
                .map(m -> ((Mark.Label) m).text())
                .collect(Collectors.joining("\n"));
    }
}
