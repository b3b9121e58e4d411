package loopwright.action;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import loopwright.course.Course;
import loopwright.course.GreenSurvey;
import loopwright.course.GreenSurvey.Arrow;
import loopwright.course.GreenSurvey.Spot;
import loopwright.course.Hole;
import loopwright.course.HoleNotes;
import loopwright.course.LocalRule;
import loopwright.course.SkylineTarget;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.course.Tree;
import loopwright.geo.Line;
import loopwright.geo.Place;

/** Changes the marks of a hole as they were drawn: tees, hole line, hole location, trees and what is noted at places. */
public final class MendMarks {
    private MendMarks() {}

    public enum Kind {
        TEE,
        BEND,
        HOLE_LOCATION,
        TREE,
        SKYLINE,
        DROP_ZONE,
        TEMPORARY_GREEN,
        SPOT,
        ARROW
    }

    /**
     * A mark.
     *
     * @param id of a mark that is there already: the name of a set of tees, the id of a tree, the number of an entry of
     *     the notes from 0; of a new mark anything else
     * @param name of a set of tees or a skyline target
     * @param numbers by what they say: "crown" (its radius), "height", "gap", "level" (of a spot; metres), "density",
     *     "slope" (fall over run), "toward" (bearing, radians)
     */
    public record Mark(String id, Kind kind, Place at, String name, Map<String, Double> numbers) {
        public Mark {
            numbers = Map.copyOf(numbers);
        }

        private double number(String what) {
            Double value = numbers.get(what);
            if (value == null) {
                throw new IllegalArgumentException("its " + what + " is missing");
            }
            return value;
        }
    }

    /**
     * What was changed.
     *
     * @param set marks that are new, moved or described anew
     * @param gone marks that are taken away, by kind and id
     * @param line places of the hole line from the tee to the green, if any of them changed
     * @param rules local rules in force on the hole, if any of them changed
     */
    public record Changes(List<Mark> set, List<Gone> gone, Optional<List<Place>> line, Optional<Set<LocalRule>> rules) {
        public Changes {
            set = List.copyOf(set);
            gone = List.copyOf(gone);
            rules = rules.map(Set::copyOf);
        }

        /** Local rules stay. */
        public Changes(List<Mark> set, List<Gone> gone, Optional<List<Place>> line) {
            this(set, gone, line, Optional.empty());
        }
    }

    public record Gone(Kind kind, String id) {}

    /** The marks of a hole as they are; trees are common to all holes. */
    public static List<Mark> list(Course course, Hole hole) {
        List<Mark> out = new ArrayList<>();
        course.teeSets()
                .forEach(t -> Optional.ofNullable(t.placeByHole().get(hole.number()))
                        .ifPresent(p -> out.add(new Mark(t.name(), Kind.TEE, p.place(), t.name(), Map.of()))));
        number(hole.line().places(), (i, p) -> out.add(new Mark(i, Kind.BEND, p, "", Map.of())));
        out.add(new Mark("", Kind.HOLE_LOCATION, hole.holeLocation(), "", Map.of()));
        HoleNotes notes = hole.survey().notes();
        number(notes.skylineTargets(), (i, t) -> out.add(new Mark(i, Kind.SKYLINE, t.place(), t.name(), Map.of())));
        number(notes.dropZones(), (i, p) -> out.add(new Mark(i, Kind.DROP_ZONE, p, "", Map.of())));
        notes.temporaryGreen().ifPresent(p -> out.add(new Mark("", Kind.TEMPORARY_GREEN, p, "", Map.of())));
        number(
                notes.green().spots(),
                (i, s) -> out.add(new Mark(i, Kind.SPOT, s.place(), "", Map.of("level", s.heightMetres()))));
        number(
                notes.green().arrows(),
                (i, a) -> out.add(new Mark(
                        i, Kind.ARROW, a.place(), "", Map.of("slope", a.slope(), "toward", a.downhillRadians()))));
        return out;
    }

    public static List<Mark> listTrees(Course course) {
        return course.trees().stream()
                .map(t -> new Mark(
                        t.id(),
                        Kind.TREE,
                        t.place(),
                        "",
                        Map.of(
                                "crown",
                                t.crownRadiusMetres(),
                                "height",
                                t.heightMetres(),
                                "gap",
                                t.gapMetres(),
                                "density",
                                t.density())))
                .toList();
    }

    private static <T> void number(List<T> items, BiConsumer<String, T> each) {
        for (int i = 0; i < items.size(); i++) {
            each.accept(Integer.toString(i), items.get(i));
        }
    }

    /** {@code hole} is empty where the whole course is mended: then only trees can be changed. */
    public static Course apply(Course course, Optional<Hole> hole, Changes changes) {
        Course out = trees(course, changes);
        if (hole.isPresent()) {
            out = tees(out, hole.get(), changes);
            Hole mended = placed(hole.get(), changes);
            mended = mended.withSurvey(mended.survey().withNotes(notes(mended, changes)));
            int number = mended.number();
            Hole kept = mended;
            out = out.withHoles(out.holes().stream()
                    .map(h -> h.number() == number ? kept : h)
                    .toList());
        }
        return out;
    }

    private static Course trees(Course course, Changes changes) {
        Map<String, Mark> marks = byId(changes, Kind.TREE);
        List<Tree> out = new ArrayList<>();
        for (Tree tree : course.trees()) {
            Mark mark = marks.remove(tree.id());
            if (!isGone(changes, Kind.TREE, tree.id())) {
                out.add(mark == null ? tree : tree(mark));
            }
        }
        marks.values().forEach(m -> out.add(tree(m)));
        return course.withTrees(out);
    }

    private static Tree tree(Mark m) {
        return said(
                m,
                () -> new Tree(
                        m.id(), m.at(), m.number("crown"), m.number("height"), m.number("gap"), m.number("density")));
    }

    private static Map<String, Mark> byId(Changes changes, Kind kind) {
        Map<String, Mark> out = new LinkedHashMap<>();
        changes.set().stream().filter(m -> m.kind() == kind).forEach(m -> out.put(m.id(), m));
        return out;
    }

    private static boolean isGone(Changes changes, Kind kind, String id) {
        return changes.gone().contains(new Gone(kind, id));
    }

    /** What a mark says, or the reason why it cannot be. */
    private static <T> T said(Mark mark, Supplier<T> make) {
        try {
            return make.get();
        } catch (IllegalArgumentException e) {
            throw new UserFault(
                    "A mark (" + mark.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ") cannot be kept: "
                            + e.getMessage() + "; change it and save again.",
                    e);
        }
    }

    private static Course tees(Course course, Hole hole, Changes changes) {
        Map<String, Mark> marks = byId(changes, Kind.TEE);
        if (marks.isEmpty()) {
            return course;
        }
        List<TeeSet> sets = new ArrayList<>();
        for (TeeSet set : course.teeSets()) {
            Mark mark = marks.remove(set.name());
            sets.add(mark == null ? set : placed(set, set.name(), hole, mark.at()));
        }
        marks.values().forEach(m -> sets.add(placed(nearest(course, hole, m.at()), newName(sets, m), hole, m.at())));
        sets.sort(Comparator.comparingDouble((TeeSet s) -> -course.lengthMetres(s)));
        List<TeeSet> ranked = new ArrayList<>();
        sets.forEach(s -> ranked.add(new TeeSet(s.name(), ranked.size(), s.placeByHole())));
        return course.withTeeSets(ranked);
    }

    private static TeeSet placed(TeeSet set, String name, Hole hole, Place at) {
        Map<Integer, TeePlace> places = new HashMap<>(set.placeByHole());
        places.put(hole.number(), new TeePlace(at, Optional.empty()));
        return new TeeSet(name, set.rankFromBack(), places);
    }

    /** New tees take the places of other holes from the set that starts nearest on this one. */
    private static TeeSet nearest(Course course, Hole hole, Place at) {
        return course.teeSets().stream()
                .min(Comparator.comparingDouble(
                        t -> t.getPlace(hole.number()).place().distanceTo(at)))
                .orElseThrow(() -> new UserFault("The course has no tees to make others from."));
    }

    private static String newName(List<TeeSet> sets, Mark mark) {
        String name = mark.name();
        if (!name.matches("[\\p{L}\\d][\\p{L}\\d ._-]{0,30}")) {
            throw new UserFault("\"" + name + "\" is no name for tees; use letters, digits and blanks.");
        }
        if (sets.stream().anyMatch(t -> t.name().equalsIgnoreCase(name))) {
            throw new UserFault("There are tees named \"" + name + "\" already; move those, or choose another name.");
        }
        return name;
    }

    private static Hole placed(Hole hole, Changes changes) {
        Hole out = hole;
        if (changes.line().isPresent()) {
            List<Place> line = changes.line().get();
            if (line.size() < 2 || !(new Line(line).lengthMetres() > 1)) {
                throw new UserFault("The line of hole " + hole.number()
                        + " needs a beginning and an end; put its ends back and save again.");
            }
            out = out.withLine(new Line(line));
        }
        for (Mark m : byId(changes, Kind.HOLE_LOCATION).values()) {
            if (!hole.green().contains(m.at())) {
                throw new UserFault("The hole location of hole " + hole.number()
                        + " must lie on its green; move it there and save again.");
            }
            out = out.withHoleLocation(m.at());
        }
        return out;
    }

    private static HoleNotes notes(Hole hole, Changes changes) {
        HoleNotes n = hole.survey().notes();
        List<SkylineTarget> skyline =
                edited(n.skylineTargets(), changes, Kind.SKYLINE, m -> new SkylineTarget(m.name(), m.at()));
        List<Place> zones = edited(n.dropZones(), changes, Kind.DROP_ZONE, Mark::at);
        GreenSurvey green = new GreenSurvey(
                edited(n.green().spots(), changes, Kind.SPOT, m -> new Spot(onGreen(hole, m), m.number("level"))),
                edited(
                        n.green().arrows(),
                        changes,
                        Kind.ARROW,
                        m -> new Arrow(onGreen(hole, m), m.number("slope"), m.number("toward"))));
        Optional<Place> temporary = n.temporaryGreen();
        Set<LocalRule> rules = new HashSet<>(changes.rules().orElse(n.localRules()));
        if (changes.gone().stream().anyMatch(g -> g.kind() == Kind.TEMPORARY_GREEN)) {
            temporary = Optional.empty();
            rules.remove(LocalRule.TEMPORARY_GREEN);
        }
        HoleNotes out = new HoleNotes(skyline, rules, zones, temporary, green);
        for (Mark m : byId(changes, Kind.TEMPORARY_GREEN).values()) {
            out = out.withTemporaryGreen(m.at());
        }
        return out;
    }

    private static Place onGreen(Hole hole, Mark m) {
        if (!hole.green().contains(m.at())) {
            throw new IllegalArgumentException("it does not lie on the green of hole " + hole.number());
        }
        return m.at();
    }

    /** A list of the notes with its marks changed, taken away and added. */
    private static <T> List<T> edited(List<T> before, Changes changes, Kind kind, Function<Mark, T> make) {
        Map<String, Mark> marks = byId(changes, kind);
        List<T> out = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            String id = Integer.toString(i);
            Mark mark = marks.remove(id);
            if (!isGone(changes, kind, id)) {
                out.add(mark == null ? before.get(i) : said(mark, () -> make.apply(mark)));
            }
        }
        marks.values().forEach(m -> out.add(said(m, () -> make.apply(m))));
        return out;
    }
}
