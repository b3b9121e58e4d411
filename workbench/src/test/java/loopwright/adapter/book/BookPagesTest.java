package loopwright.adapter.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import loopwright.action.Book;
import loopwright.action.LengthUnit;
import loopwright.action.SyntheticBook;
import loopwright.course.Course;
import loopwright.demo.DemoCourse;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Labels;
import loopwright.drawing.Mark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every page of the book must be, on the demo and on holes that strain a page. */
class BookPagesTest {
    /** Letters keep this far from the edge of a page, points: scissors err by a millimetre and more. */
    private static final double CLEAR = 8;

    static Stream<Course> courses() {
        return Stream.concat(
                Stream.of(DemoCourse.create(), OddCourses.withArrows(OddCourses.measured())),
                OddCourses.all().stream());
    }

    @ParameterizedTest
    @MethodSource("courses")
    void nothingIsClippedAndNoTextCoversAnother(Course course) {
        for (LengthUnit unit : LengthUnit.values()) {
            for (Drawing page : PrintedBook.pages(SyntheticBook.of(course, unit))) {
                Extent clear = page.sheet().grown(-CLEAR);
                List<Mark.Label> labels = Labels.of(page.marks());
                assertThat(labels).isNotEmpty();
                for (Mark.Label label : labels) {
                    assertThat(clear.contains(label.extent()))
                            .as(course.name() + ", " + page.title() + ": " + label.text())
                            .isTrue();
                }
                assertThat(Labels.listOverlaps(labels))
                        .as(course.name() + ", " + page.title())
                        .isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("courses")
    void noTextIsCutByTheFrameOfAPicture(Course course) {
        for (Drawing page : PrintedBook.pages(SyntheticBook.of(course, LengthUnit.YARDS))) {
            for (Mark.Window window : windows(page.marks())) {
                Extent frame = window.window().extent();
                assertThat(Labels.of(window.inside()))
                        .as(course.name() + ", " + page.title())
                        .allMatch(l -> frame.contains(l.extent()));
            }
        }
    }

    private static List<Mark.Window> windows(List<Mark> marks) {
        return marks.stream()
                .flatMap(m -> m instanceof Mark.Window w
                        ? Stream.of(w)
                        : m instanceof Mark.Tagged t ? windows(t.inside()).stream() : Stream.empty())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("courses")
    void whatIsReadDuringPlayIsNinePointsOrMore(Course course) {
        Book book = SyntheticBook.of(course, LengthUnit.YARDS);
        List<Drawing> pages = PrintedBook.pages(book);
        for (int i = 0; i < pages.size(); i++) {
            Book.Kind kind = book.pages().get(i).kind();
            double least = kind == Book.Kind.COVER ? 7 : Book.Role.LEAST_DURING_PLAY;
            List<Mark.Label> small = Labels.of(pages.get(i).marks()).stream()
                    .filter(l -> l.size() < least)
                    .toList();
            // What is smaller tells of the picture (its scale, its key, whether a slope was measured), not of the play.
            assertThat(small)
                    .as(pages.get(i).title())
                    .allMatch(l -> l.size() == Book.Role.SMALL.points()
                            && l.text().matches("1:\\d+.*|\\d+ (yd|m)|dot: .*|Slope not measured.*|Arrows: .*"));
        }
    }

    @Test
    void everyPageIsSmallerThanTheRulesAllow() {
        for (Drawing page : PrintedBook.pages(SyntheticBook.of(DemoCourse.create(), LengthUnit.YARDS))) {
            assertThat(page.width()).isEqualTo(4.2 * 72, within(1e-9)); // exact but for rounding
            assertThat(page.height()).isEqualTo(6.9 * 72, within(1e-9));
        }
        assertThat(Book.PAGE_WIDTH_INCHES).isLessThanOrEqualTo(4.25);
        assertThat(Book.PAGE_HEIGHT_INCHES).isLessThanOrEqualTo(7);
    }

    @Test
    void anUnsurveyedHoleAndAMissingGreenAreSaidOnTheirPages() {
        Course none = OddCourses.all().stream()
                .filter(c -> c.name().equals("no green"))
                .findFirst()
                .orElseThrow();
        Book.Page hole =
                SyntheticBook.of(none, LengthUnit.YARDS).pages(Book.Kind.HOLE).get(0);
        assertThat(hole.texts(Book.Role.UNSURVEYED).get(0))
                .contains("nobody has checked trees, out of bounds, penalty areas")
                .contains("No green on the map");
    }

    @Test
    void slopesAreDrawnOnlyWhereTheyWereMeasured() {
        Course bare = OddCourses.measured();
        assertThat(slopes(bare)).isEmpty();
        assertThat(slopes(OddCourses.withArrows(bare))).isNotEmpty();
    }

    private static List<Book.Slope> slopes(Course course) {
        Book.Page green = SyntheticBook.of(course, LengthUnit.YARDS)
                .pages(Book.Kind.GREEN)
                .get(0);
        return ((Book.GreenGround) green.picture().orElseThrow()).slopes();
    }
}
