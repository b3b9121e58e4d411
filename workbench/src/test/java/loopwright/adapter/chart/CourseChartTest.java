package loopwright.adapter.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.action.LengthUnit;
import loopwright.action.UserFault;
import loopwright.demo.DemoCourse;
import loopwright.drawing.Drawing;
import loopwright.drawing.Labels;
import loopwright.drawing.Mark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CourseChartTest {
    private static final Drawing CHART = CourseChart.of(SyntheticCourse.twoHoles(), LengthUnit.YARDS);
    private static final Drawing DEMO = CourseChart.of(DemoCourse.create(), LengthUnit.YARDS);

    @Test
    void everyTextLiesOnTheSheetAndOverNoOther() {
        List<Mark.Label> labels = Labels.of(CHART.marks());
        assertThat(labels).hasSizeGreaterThan(30);
        for (Mark.Label label : labels) {
            assertThat(CHART.sheet().contains(label.extent())).as(label.text()).isTrue();
        }
        assertThat(Labels.listOverlaps(labels)).isEmpty();
    }

    @Test
    void numbersEveryHole() {
        assertThat(Labels.of(CHART.marks()).stream().map(Mark.Label::text)).contains("1", "2");
    }

    @Test
    void saysWhichHolesNobodyHasLookedAt() {
        assertThat(Labels.of(CHART.marks()).stream().map(Mark.Label::text)).contains("unsurveyed: all holes");
        assertThat(Labels.of(DEMO.marks()).stream().map(Mark.Label::text)).noneMatch(t -> t.startsWith("unsurveyed"));
    }

    @Test
    void theDemoCourseIsLetteredWithoutOverlap() {
        List<Mark.Label> labels = Labels.of(DEMO.marks());
        assertThat(labels).allMatch(l -> DEMO.sheet().grown(-12).contains(l.extent()));
        assertThat(Labels.listOverlaps(labels)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"course.png", "course.svg", "course.pdf"})
    void sameCourseSameBytes(String name, @TempDir Path folder) throws Exception {
        Path first = folder.resolve("1-" + name);
        Path second = folder.resolve("2-" + name);
        new ChartedCourses().drawCourse(SyntheticCourse.twoHoles(), LengthUnit.YARDS, first);
        new ChartedCourses().drawCourse(SyntheticCourse.twoHoles(), LengthUnit.YARDS, second);
        assertThat(Files.readAllBytes(first)).isEqualTo(Files.readAllBytes(second));
        try (var files = Files.list(folder)) {
            assertThat(new ArrayList<>(files.toList())).hasSize(2);
        }
    }

    @Test
    void anotherEndingIsRefusedInOneSentence(@TempDir Path folder) {
        assertThatThrownBy(() -> new ChartedCourses()
                        .drawCourse(SyntheticCourse.twoHoles(), LengthUnit.YARDS, folder.resolve("c.gif")))
                .isInstanceOf(UserFault.class)
                .hasMessage("The picture's name \"c.gif\" must end in .png, .svg or .pdf, which says how to draw it.");
    }

    @Test
    void aMissingFolderIsNamed(@TempDir Path folder) {
        Path missing = folder.resolve("none");
        assertThatThrownBy(() -> new ChartedCourses()
                        .drawCourse(SyntheticCourse.twoHoles(), LengthUnit.YARDS, missing.resolve("c.png")))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining(missing.toString());
    }

    @Test
    void aReaderOfMetresReadsMetres() {
        String words = CourseChart.of(SyntheticCourse.twoHoles(), LengthUnit.METRES).marks().stream()
                .filter(m -> m instanceof Mark.Label)
                .map(m -> ((Mark.Label) m).text())
                .collect(Collectors.joining("\n"));
        assertThat(words).contains("metres").containsPattern("\\d m\\b").doesNotContainPattern("\\d yd|yards");
    }
}
