package loopwright.adapter.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loopwright.action.HolePicture;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.demo.DemoCourse;
import loopwright.drawing.Drawing;
import loopwright.drawing.Face;
import loopwright.drawing.Ink;
import loopwright.drawing.Labels;
import loopwright.drawing.Mark;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HoleChartTest {
    private static final Course DEMO = DemoCourse.create();

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18})
    void nothingIsClippedAndNoTextCoversAnother(int number) {
        Drawing chart = HoleChart.of(SyntheticPlan.of(DEMO, number, number % 3 == 0));
        List<Mark.Label> labels = Labels.of(chart.marks());
        assertThat(labels).hasSizeGreaterThan(20);
        for (Mark.Label label : labels) {
            assertThat(chart.sheet().grown(-12).contains(label.extent()))
                    .as(label.text())
                    .isTrue();
        }
        assertThat(Labels.listOverlaps(labels)).isEmpty();
    }

    /** The invented plan has an aim 22 m before every hole, near the edge of the green. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18})
    void noNameOfAnotherChoiceLiesOnTheEdgeOfAGreenOrABunker(int number) {
        Drawing chart = HoleChart.of(SyntheticPlan.of(DEMO, number, false));
        List<Mark.Label> names = Labels.of(chart.marks()).stream()
                .filter(l -> l.face() == Face.ITALIC && l.text().matches(".*(\\+0\\.06|the same for you)"))
                .toList();
        assertThat(names).isNotEmpty();
        for (Trace edge : edges(chart.marks())) {
            for (Mark.Label name : names) {
                assertThat(edge.points()).as(name.text()).noneMatch(name.extent()::contains);
            }
        }
    }

    /** Edges of greens and bunkers, with a point every point of paper or less. */
    private static List<Trace> edges(List<Mark> marks) {
        List<Trace> out = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Window window) {
                out.addAll(edges(window.inside()));
            } else if (mark instanceof Mark.Shape shape && (shape.fill() == Ink.GREEN || shape.fill() == Ink.SAND)) {
                shape.traces().forEach(t -> out.add(dense(t)));
            }
        }
        return out;
    }

    private static Trace dense(Trace trace) {
        List<Point> out = new ArrayList<>();
        int n = trace.points().size();
        for (int i = 0; i < n; i++) {
            Point a = trace.points().get(i);
            Point b = trace.points().get((i + 1) % n);
            for (double at = 0; at <= a.distanceTo(b); at++) {
                out.add(a.polar(a.angleTo(b), at));
            }
        }
        return new Trace(out, true);
    }

    @Test
    void whatIsReadIsNineAndAHalfPointsOrMoreAndNothingIsSmallerThanEightAndAHalf() {
        List<Mark.Label> labels =
                Labels.of(HoleChart.of(SyntheticPlan.of(DEMO, 4, true)).marks());
        assertThat(labels).allMatch(l -> l.size() >= 8.5);
        assertThat(labels.stream().filter(l -> l.text().contains("driver"))).allMatch(l -> l.size() >= 9.5);
    }

    @Test
    void anUnsurveyedHoleSaysWhatNobodyChecked() {
        assertThat(words(groundOnly(new HoleSurvey(true, false, false, true))))
                .contains("Unsurveyed: nobody has checked out of bounds and penalty areas here.");
        assertThat(words(groundOnly(HoleSurvey.NOTHING)))
                .contains("nobody has checked trees, out of bounds and penalty areas here.");
        assertThat(words(groundOnly(new HoleSurvey(true, true, true, false)))).doesNotContain("Unsurveyed");
    }

    @Test
    void aPlanCarriesClubsBearingsCostsAndDoubt() {
        String words = words(SyntheticPlan.of(DEMO, 10, false));
        assertThat(words)
                .contains("driver", "at the right edge of the left fairway bunker", "start line 00", "room 49 yd")
                .contains("3-wood +0.06", "the same for you", "4.6 (4.4 to 4.9)", "penalty area 9 %");
    }

    @Test
    void playRunsUpThePageAtTheScaleOfTheBar() {
        HolePicture picture = SyntheticPlan.of(DEMO, 2, false);
        Drawing chart = HoleChart.of(picture);
        Mark.Label zero = label(chart, "0");
        Mark.Label end = Labels.of(chart.marks()).stream()
                .filter(l -> l.text().matches("\\d+ yd")
                        && Math.abs(l.at().y() - zero.at().y()) < 1e-6)
                .findFirst()
                .orElseThrow();
        double pointsPerYard =
                (end.at().x() - zero.at().x()) / Double.parseDouble(end.text().replace(" yd", ""));
        Mark.Label fifty = label(chart, "50");
        Mark.Label twoHundred = label(chart, "200");
        assertThat(fifty.at().y()).isLessThan(twoHundred.at().y());
        // The labels stand beside their ticks, up to a text height and a place beside off; the hole bends a little.
        assertThat((twoHundred.at().y() - fifty.at().y()) / pointsPerYard).isBetween(125.0, 160.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"hole.png", "hole.svg"})
    void samePictureSameBytes(String name, @TempDir Path folder) throws Exception {
        Path first = folder.resolve("1" + name);
        Path second = folder.resolve("2" + name);
        new ChartedHoles().drawHole(SyntheticPlan.of(DEMO, 8, true), first);
        new ChartedHoles().drawHole(SyntheticPlan.of(DEMO, 8, true), second);
        assertThat(Files.readAllBytes(first)).isEqualTo(Files.readAllBytes(second));
    }

    private static HolePicture groundOnly(HoleSurvey survey) {
        Hole hole = DEMO.getHole(5).withSurvey(survey);
        return HolePicture.ofGround(
                DEMO, hole, "white", DEMO.teeSets().get(2).getPlace(5).place());
    }

    private static String words(HolePicture picture) {
        return String.join(
                " ",
                Labels.of(HoleChart.of(picture).marks()).stream()
                        .map(Mark.Label::text)
                        .toList());
    }

    private static Mark.Label label(Drawing chart, String text) {
        return Labels.of(chart.marks()).stream()
                .filter(l -> l.text().equals(text))
                .findFirst()
                .orElseThrow();
    }
}
