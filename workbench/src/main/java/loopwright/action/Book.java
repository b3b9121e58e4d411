package loopwright.action;

import java.util.List;
import java.util.Optional;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Place;

/**
 * A printed book as text: pages in reading order, each with its lines and tables and what is drawn on it. It is the whole
 * content; whoever prints it only sets and draws.
 *
 * @param title of the document
 * @param unit in which every length of it is told
 */
public record Book(String title, LengthUnit unit, List<Page> pages) {
    /** No page is larger than 4.25 x 7 in (Clarification 4.3a/1 of the Rules of Golf); a little less, since scissors err. */
    public static final double PAGE_WIDTH_INCHES = 4.2;

    public static final double PAGE_HEIGHT_INCHES = 6.9;

    /** A green is drawn no larger than 1:480, 3/8 inch to 5 yards (the same clarification). */
    public static final int LARGEST_GREEN_SCALE = 480;

    /** ISO 639-1 language of every text. */
    public static final String LANGUAGE = "en";

    public Book {
        pages = List.copyOf(pages);
    }

    /** Pages of some kind, in order. */
    public List<Page> pages(Kind kind) {
        return pages.stream().filter(p -> p.kind() == kind).toList();
    }

    /** What a page is for. */
    public enum Kind {
        COVER,
        HOLE,
        GREEN,
        CARD,
        EXPECTATIONS,
        PENCIL_CARD,
        WEDGES,
        STATE_OF_PLAY,
        /** A whole sheet to write on. */
        SHEET,
        /** A part of a report; parts are set below each other on whole sheets. */
        REPORT,
        /** The same, in letters for whoever reads only this one. */
        PLAYER_PAGE
    }

    /**
     * One page.
     *
     * @param hole number of the hole it tells of; 0: none
     */
    public record Page(
            Kind kind, int hole, String title, List<Line> lines, Optional<Table> table, Optional<Picture> picture) {
        public Page {
            lines = List.copyOf(lines);
        }

        static Page of(Kind kind, String title, List<Line> lines) {
            return new Page(kind, 0, title, lines, Optional.empty(), Optional.empty());
        }

        static Page of(Kind kind, String title, List<Line> lines, Table table) {
            return new Page(kind, 0, title, lines, Optional.of(table), Optional.empty());
        }

        /** The lines of one role, in order. */
        public List<String> texts(Role role) {
            return lines.stream().filter(l -> l.role() == role).map(Line::text).toList();
        }
    }

    /** One line of text; it may be broken where the page is narrow. */
    public record Line(Role role, String text) {}

    /**
     * What a line is for, and with it how large it is set.
     *
     * <p>Whatever is read during play is at least {@link #LEAST_DURING_PLAY} points.
     */
    public enum Role {
        /** Par, length, stroke index. */
        FACTS(10.5, true),
        /** The club of a shot. */
        CLUB(13.5, true),
        /** What it is aimed at. */
        AIM(10.5, true),
        /** The one carry. */
        CARRY(9.5, true),
        ROOM(9.5, true),
        MISS(9.5, true),
        START_LINE(9.5, true),
        WIND(9.5, true),
        PROVISIONAL(9.5, true),
        /** People and places that a shot may reach. */
        BEWARE(9.5, true),
        /** A later shot of the plan. */
        NEXT(10.5, true),
        /** The one plain line. */
        SENTENCE(10, true),
        /** What nobody has checked. */
        UNSURVEYED(9.5, true),
        DECISION(9.5, true),
        EXPECTATION(9.5, true),
        /** A sentence that a report opens with. */
        LEAD(12.5, false),
        /** How a page is used. */
        NOTE(9, false),
        /** Scale and source. */
        SMALL(7.5, false),
        WARNING(9.5, false),
        COVER_NAME(17, false),
        COVER_FACT(11, false);

        public static final double LEAST_DURING_PLAY = 9;

        private final double points;
        private final boolean duringPlay;

        Role(double points, boolean duringPlay) {
            this.points = points;
            this.duringPlay = duringPlay;
        }

        public double points() {
            return points;
        }

        public boolean duringPlay() {
            return duringPlay;
        }
    }

    /**
     * Rows under heads; empty cells are room for a pencil.
     *
     * @param name what it tells, for those who cannot see it
     * @param shares of the width that each column takes, summing to 1
     * @param bars one for each row, drawn in its last cell; or none at all
     */
    public record Table(String name, List<String> heads, List<Double> shares, List<List<String>> rows, List<Bar> bars) {
        public Table {
            heads = List.copyOf(heads);
            shares = List.copyOf(shares);
            rows = rows.stream().map(List::copyOf).toList();
            bars = List.copyOf(bars);
            int columns = heads.size();
            if (shares.size() != columns || rows.stream().anyMatch(r -> r.size() != columns)) {
                throw new IllegalArgumentException("every row of a table has as many cells as it has heads");
            }
            if (!bars.isEmpty() && bars.size() != rows.size()) {
                throw new IllegalArgumentException("a table has a bar for each row or none");
            }
        }

        public Table(String name, List<String> heads, List<Double> shares, List<List<String>> rows) {
            this(name, heads, shares, rows, List.of());
        }

        /** Some of the rows, with their bars. */
        public Table rows(int from, int to) {
            return new Table(
                    name, heads, shares, rows.subList(from, to), bars.isEmpty() ? bars : bars.subList(from, to));
        }
    }

    /** A bar from the axis to {@code value}, with the ends of what is not known; both are the value where nothing is said. */
    public record Bar(double value, double low, double high) {
        static Bar of(double value) {
            return new Bar(value, value, value);
        }
    }

    /** What is drawn on a page. */
    public sealed interface Picture {
        /** Said to those who cannot see it. */
        String words();
    }

    /**
     * A hole, play running up the page, with its prepared shots.
     *
     * @param carry distance from the tee that clears what has to be carried
     */
    public record HoleGround(
            Course course, Hole hole, Place tee, List<Shot> shots, Optional<Double> carry, String words)
            implements Picture {
        public HoleGround {
            shots = List.copyOf(shots);
        }
    }

    /** The whole course, with the holes played. */
    public record CourseGround(Course course, List<Hole> holes, String words) implements Picture {
        public CourseGround {
            holes = List.copyOf(holes);
        }
    }

    /** Holes as they were played, beside each other. */
    public record PlayedGround(Course course, List<PlayedHole> holes, String words) implements Picture {
        public PlayedGround {
            holes = List.copyOf(holes);
        }
    }

    /**
     * A hole as it was played.
     *
     * @param heading number and score
     * @param spots where the ball lay before each stroke
     * @param holed true if the last stroke ended in the hole
     */
    public record PlayedHole(Hole hole, Place tee, String heading, List<Spot> spots, boolean holed) {
        public PlayedHole {
            spots = List.copyOf(spots);
        }
    }

    /** Where a ball lay; {@code noted} is false where only its distance was, and it is drawn on the line of play. */
    public record Spot(Place place, boolean noted) {}

    /** A prepared shot: from the tee, or from where the plan expects the ball. */
    public record Shot(Place from, Place aim, String club, Optional<HolePicture.Room> room) {}

    /**
     * A green, the way of play up the page.
     *
     * @param up bearing that points up the page
     * @param front the edge the paces are counted from, metres below the middle; {@code back} above, {@code left}, {@code
     *     right} beside it, all 0 or more
     * @param slopes only what was measured
     */
    public record GreenGround(
            Course course,
            Hole hole,
            double up,
            double front,
            double back,
            double left,
            double right,
            List<Slope> slopes,
            List<Target> targets,
            String words)
            implements Picture {
        public GreenGround {
            slopes = List.copyOf(slopes);
            targets = List.copyOf(targets);
        }
    }

    /** A measured fall: over run, and the bearing it goes down. */
    public record Slope(Place place, double fall, double downhillRadians) {}

    /** Where to aim when the hole is cut in one part of the green: "front left". */
    public record Target(String part, Place hole, Place aim) {}
}
