package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.AimField;
import loopwright.action.HolePicture;
import loopwright.action.HoleScreens;
import loopwright.action.LengthUnit;
import loopwright.action.Remembered;
import loopwright.course.Course;
import loopwright.drawing.Extent;
import loopwright.drawing.HeightContours;
import loopwright.drawing.Lettering;
import loopwright.drawing.Mark;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.SvgPage;
import loopwright.geo.Place;
import loopwright.ground.HeightField;

/** Draws holes for a screen, play running up, as wide as the ground that matters. */
public final class ScreenedHoles implements HoleScreens {
    private static final double HEIGHT = 760;
    private static final double LEAST_WIDTH = 360;
    private static final double MOST_WIDTH = 620;
    /** Ground shown beside and beyond the line of play, metres. */
    private static final double MARGIN_METRES = 42;

    private static final int KEPT_HEIGHTS = 24;

    private final Remembered<Lay, HeightContours> heights = new Remembered<>(KEPT_HEIGHTS);

    /** Heights as they lie on a screen. */
    private record Lay(HeightField field, SheetView view, Extent sheet) {}

    /** The ground lies the same wherever on the green the hole is cut. */
    @Override
    public Screen screen(HolePicture picture, LengthUnit lengths) {
        double up = picture.tee().bearingTo(picture.hole().green().centre());
        List<Place> shown =
                new ArrayList<>(picture.hole().lineFrom(picture.tee()).places());
        picture.hole().green().polygons().forEach(p -> shown.addAll(p.get(0)));
        SheetView unit = new SheetView(picture.tee(), new Point(0, 0), up, 1);
        Extent ground =
                Extent.around(shown.stream().map(unit::toSheet).toList()).grown(MARGIN_METRES);
        double scale = Math.min(HEIGHT / ground.height(), MOST_WIDTH / ground.width());
        double width = Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, ground.width() * scale));
        Extent sheet = new Extent(0, 0, width, ground.height() * scale);
        SheetView view = new SheetView(unit.toGround(ground.centre()), sheet.centre(), up, scale);
        return new Shown(
                picture,
                lengths,
                sheet,
                view,
                picture.course()
                        .heights()
                        .map(h -> heights.get(new Lay(h, view, sheet), () -> new HeightContours(h, view, sheet))));
    }

    @Override
    public Ground whole(Course course) {
        return CourseChart.groundOn(course);
    }

    private record Shown(
            HolePicture picture, LengthUnit lengths, Extent sheet, SheetView view, Optional<HeightContours> heights)
            implements Screen {
        @Override
        public double width() {
            return sheet.width();
        }

        @Override
        public double height() {
            return sheet.height();
        }

        @Override
        public String ground() {
            return SvgPage.marksOf(new HoleOverlay(picture, view, sheet, lengths, heights).ground());
        }

        @Override
        public String over(HolePicture other) {
            return SvgPage.marksOf(new HoleOverlay(other, view, sheet, lengths, heights).plan());
        }

        @Override
        public String contours(HolePicture.StrokesField strokes) {
            StrokesContours contours = new StrokesContours(strokes, view, sheet);
            List<Mark> marks = new ArrayList<>(contours.lines());
            Lettering lettering = new Lettering(sheet.grown(-3));
            contours.letter(lettering);
            marks.addAll(lettering.texts());
            return SvgPage.marksOf(marks);
        }

        @Override
        public String aims(AimField field) {
            return SvgPage.marksOf(new AimContours(field, view).marks(sheet, lengths));
        }

        @Override
        public double[] at(Place place) {
            Point p = view.toSheet(place);
            return new double[] {p.x(), p.y()};
        }

        @Override
        public Place placeAt(double x, double y) {
            return view.toGround(new Point(x, y));
        }
    }
}
