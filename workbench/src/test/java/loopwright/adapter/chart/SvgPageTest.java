package loopwright.adapter.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import loopwright.action.LengthUnit;
import loopwright.drawing.Drawing;
import loopwright.drawing.Face;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SvgPage;
import loopwright.drawing.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;

class SvgPageTest {
    @Test
    void aCourseIsWellFormedXmlWithItsNameAsTitle() throws Exception {
        String svg = SvgPage.of(CourseChart.of(SyntheticCourse.twoHoles(), LengthUnit.YARDS));
        Document xml = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        assertThat(
                        xml.getDocumentElement().getLocalName() == null
                                ? xml.getDocumentElement().getTagName()
                                : xml.getDocumentElement().getLocalName())
                .isEqualTo("svg");
        assertThat(xml.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Chart of Synthetic <Test> & Sons");
    }

    @Test
    void carriesNeitherStyleSheetNorScript() {
        assertThat(SvgPage.of(CourseChart.of(SyntheticCourse.twoHoles(), LengthUnit.YARDS)))
                .doesNotContain("<style", " style=", "<script");
    }

    @Test
    void charactersThatXmlForbidsAreDropped() {
        assertThat(SvgPage.escaped("a\u0000b\u0007c<&\uFFFF")).isEqualTo("abc&lt;&amp;");
    }

    @ParameterizedTest
    @CsvSource({"0,0", "1,1", "-1.5,-1.5", "0.054,0.05", "-0.054,-0.05", "12.3456,12.35", "-0.001,0", "99.999,100"})
    void numbersAreShortAndNeverLocal(double value, String text) {
        assertThat(SvgPage.number(value)).isEqualTo(text);
    }

    @Test
    void statesTheMeasuredWidthOfEveryText() {
        Drawing drawing =
                new Drawing("t", 100, 20, List.of(Mark.text("twelve yards", new Point(2, 15), Mark.Anchor.START, 9)));
        assertThat(SvgPage.of(drawing))
                .contains("textLength=\"" + SvgPage.number(Face.REGULAR.width("twelve yards", 9)));
    }

    @Test
    void onAScreenEveryPointOfAPathIsAStepInTenths() {
        assertThat(SvgPage.marksOf(List.of(line(Trace.closed(point(1.04, 2), point(1.26, 2.3), point(0.96, 2.3))))))
                .contains("d=\"M1 2l.3 .3-.3 0z\"");
        assertThat(SvgPage.marksOf(List.of(line(Trace.dot(point(1, 2)))))).contains("d=\"M1 2h0\"");
    }

    @Test
    void roundingDoesNotAddUpAlongAPath() {
        Point[] points =
                IntStream.rangeClosed(0, 1000).mapToObj(i -> point(i * 0.04, 0)).toArray(Point[]::new);
        String svg = SvgPage.marksOf(List.of(line(Trace.line(points))));
        String steps = svg.substring(svg.indexOf('l') + 1, svg.indexOf("\" fill"));
        double sum = Arrays.stream(steps.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .sum();
        // 400 steps of a tenth, each read with a rounding of its own
        assertThat(sum).isCloseTo(40, within(400 * Math.ulp(40.0)));
    }

    private static Mark line(Trace trace) {
        return Mark.drawn(Pen.of(Ink.LINE, 1), trace);
    }

    private static Point point(double x, double y) {
        return new Point(x, y);
    }
}
