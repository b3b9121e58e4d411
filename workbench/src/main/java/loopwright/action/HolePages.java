package loopwright.action;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.action.Book.Line;
import loopwright.action.Book.Role;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.geo.Place;
import loopwright.putting.GreenSurface;

/** Words the two pages of a hole: the hole itself, and its green. */
final class HolePages {
    /** From this chance of a lost ball on a provisional ball is worth a line: one in twenty, assumed. */
    private static final double WORTH_A_PROVISIONAL = 0.05;

    private static final double SAME_LINE_METRES = 2;
    /** Six paces: at 1:480 an arrow's room. */
    private static final double SLOPE_STEP_METRES = 5.5;

    private final RoundPlan plan;
    private final LengthUnit unit;

    HolePages(RoundPlan plan, LengthUnit unit) {
        this.plan = plan;
        this.unit = unit;
    }

    Book.Page hole(RoundPlan.HolePlan h, HoleBriefing b) {
        Hole hole = plan.course().getHole(h.number());
        RoundPlan.ShotPlan tee = h.shots().get(0);
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(Role.FACTS, facts(hole, h)));
        unsurveyed(hole, h).ifPresent(t -> lines.add(new Line(Role.UNSURVEYED, t)));
        lines.add(new Line(Role.CLUB, tee.club()));
        lines.add(new Line(Role.AIM, aim(tee)));
        Optional<RoundPlan.Carry> carry = carry(tee);
        carry.ifPresent(c ->
                lines.add(new Line(Role.CARRY, "Carry " + unit.whole(c.metres()) + " over the " + c.hazard() + ".")));
        tee.room().ifPresent(r -> lines.add(new Line(Role.ROOM, room(r, tee))));
        b.teeMiss().ifPresent(m -> lines.add(new Line(Role.MISS, miss(m))));
        startLines(tee, h).forEach(t -> lines.add(new Line(Role.START_LINE, t)));
        winds(tee, b).forEach(t -> lines.add(new Line(Role.WIND, t)));
        if (b.lost() >= WORTH_A_PROVISIONAL) {
            lines.add(new Line(Role.PROVISIONAL, provisional(b)));
        }
        beware(tee).ifPresent(t -> lines.add(new Line(Role.BEWARE, t)));
        for (RoundPlan.ShotPlan next : h.shots().subList(1, h.shots().size())) {
            lines.add(new Line(
                    Role.NEXT, "Then about " + unit.whole(next.toHoleMetres()) + ": " + next.club() + " " + aim(next)));
        }
        LocalRuleWords.of(hole).forEach(r -> lines.add(new Line(Role.NOTE, "Local rule: " + r + ".")));
        lines.add(new Line(Role.SENTENCE, sentence(h)));
        return new Book.Page(
                Book.Kind.HOLE,
                h.number(),
                "Hole " + h.number(),
                lines,
                Optional.empty(),
                Optional.of(ground(h, hole, carry)));
    }

    private String facts(Hole hole, RoundPlan.HolePlan h) {
        return "par " + h.par() + ", " + unit.of(h.lengthMetres())
                + (hole.strokeIndex().isPresent()
                        ? ", index " + hole.strokeIndex().getAsInt()
                        : "")
                + (h.standIn().isEmpty() ? "" : ", from the " + h.standIn() + " tee");
    }

    private static Optional<String> unsurveyed(Hole hole, RoundPlan.HolePlan h) {
        List<String> out = new ArrayList<>();
        if (!h.surveyed()) {
            out.add("Unsurveyed: nobody has checked " + unchecked(hole.survey()) + ".");
        }
        if (h.greenAssumed()) {
            out.add("No green on the map: a circle stands in.");
        }
        return out.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", out));
    }

    private static String unchecked(HoleSurvey survey) {
        List<String> missing = new ArrayList<>();
        if (!survey.trees()) {
            missing.add("trees");
        }
        if (!survey.outOfBounds()) {
            missing.add("out of bounds");
        }
        if (!survey.penaltyAreas()) {
            missing.add("penalty areas");
        }
        return String.join(", ", missing);
    }

    /** "at the left edge of the green", "along the line of play", "blind: line is over the trees 90 yd ahead". */
    String toward(RoundPlan.ShotPlan shot) {
        return shot.blind() ? unit.told(shot.line()) : at(shot.line());
    }

    /** "at the hole", "along the line of play". */
    String at(String landmark) {
        return unit.told(RoundPlan.toward(landmark));
    }

    private String aim(RoundPlan.ShotPlan shot) {
        return toward(shot) + ".";
    }

    /** What has to be carried last before the ball comes down. */
    static Optional<RoundPlan.Carry> carry(RoundPlan.ShotPlan shot) {
        return shot.hazards().stream()
                .filter(c -> c.metres() < shot.aimMetres())
                .max(Comparator.comparingDouble(RoundPlan.Carry::metres));
    }

    private String room(HolePicture.Room r, RoundPlan.ShotPlan tee) {
        String need = "8 in 10 of yours need " + unit.whole(r.eightInTenMetres()) + ".";
        if (r.leftName().equals("open") && r.rightName().equals("open")) {
            return "Open to both sides at " + unit.whole(tee.aimMetres()) + ". " + need;
        }
        return "Room " + unit.whole(r.left().distanceTo(r.right())) + " at " + unit.whole(tee.aimMetres()) + ": "
                + r.leftName() + " left, " + r.rightName() + " right. " + need;
    }

    private static String miss(HoleBriefing.SideMiss m) {
        return m.matters() ? "Miss " + (m.right() ? "right" : "left") + "." : "Miss either side: the same for you.";
    }

    private List<String> startLines(RoundPlan.ShotPlan tee, RoundPlan.HolePlan h) {
        List<String> out = new ArrayList<>();
        out.add(String.format(
                Locale.ROOT,
                "Start line: bearing %03d, aim %d out.",
                Math.floorMod(Math.round(Math.toDegrees(tee.from().bearingTo(tee.aim()))), 360L),
                unit.whole(tee.aimMetres())));
        for (RoundPlan.StartLine line : h.startLines()) {
            if (line.balls() != RoundPlan.BallsGo.AS_USUAL) {
                out.add(otherLine(tee, line));
            }
        }
        return out;
    }

    private String otherLine(RoundPlan.ShotPlan tee, RoundPlan.StartLine line) {
        double turn = tee.from().bearingTo(line.aim()) - tee.from().bearingTo(tee.aim());
        String beside = unit.beside(tee.aimMetres() * Math.sin(turn));
        boolean isNamed =
                !RoundPlan.isBeside(line.landmark()) && !line.landmark().equals(tee.landmark());
        return "Going " + (line.balls() == RoundPlan.BallsGo.RIGHT ? "right" : "left") + " today: start "
                + (beside.isEmpty() ? "the same" : beside + " of it")
                + (isNamed ? ", " + unit.told(line.landmark()) : "") + ".";
    }

    private List<String> winds(RoundPlan.ShotPlan tee, HoleBriefing b) {
        List<HoleBriefing.WindChoice> other =
                b.winds().stream().filter(w -> !same(w, tee)).toList();
        if (other.isEmpty()) {
            return List.of("Wind of " + unit.windWords() + " from any side: the same.");
        }
        List<String> out = new ArrayList<>(List.of("Wind of " + unit.windWords() + ":"));
        for (HoleBriefing.WindChoice w : other) {
            String aside = Math.abs(w.asideMetres()) < SAME_LINE_METRES ? "" : ", " + unit.beside(w.asideMetres());
            out.add(w.side().words() + ": " + w.club() + aside + ".");
        }
        if (other.size() < b.winds().size()) {
            out.add(b.winds().stream()
                            .filter(w -> same(w, tee))
                            .map(w -> w.side().words())
                            .collect(Collectors.joining(", "))
                    + ": the same.");
        }
        return out;
    }

    private static boolean same(HoleBriefing.WindChoice w, RoundPlan.ShotPlan tee) {
        return w.club().equals(tee.club()) && Math.abs(w.asideMetres()) < SAME_LINE_METRES;
    }

    private static String provisional(HoleBriefing b) {
        return String.format(
                Locale.ROOT,
                "Lost or out of bounds %.0f in 100 (%s). In doubt, announce and play a provisional ball before going"
                        + " forward (Rule 18.3).",
                100 * b.lost(),
                String.join(", ", b.lostIn()));
    }

    private static Optional<String> beware(RoundPlan.ShotPlan shot) {
        List<String> where = shot.risks().stream()
                .filter(RoundPlan.Risk::isFlagged)
                .map(r -> String.format(Locale.ROOT, "%s %.0f in 100", r.where(), Math.max(1, 100 * r.chance())))
                .toList();
        return where.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Beware: may finish " + String.join(", ", where) + ". Wait until nobody is within reach.");
    }

    /** The decision on this hole if there is one, else what is a good score. */
    private String sentence(RoundPlan.HolePlan h) {
        for (RoundPlan.Decision d : plan.decisions()) {
            if (d.hole() == h.number()) {
                return decision(d);
            }
        }
        return String.format(
                Locale.ROOT,
                "Par or better %s, bogey or better %s.",
                tenths(h.probability(0, h.par())),
                tenths(h.probability(0, h.par() + 1)));
    }

    String decision(RoundPlan.Decision d) {
        String habit = d.plan().habit().club();
        String instead = habit.equals(d.plan().club())
                ? "Your usual line with it"
                        + besideWords(d.plan().habit().offsetMetres() - d.plan().offsetMetres())
                : "Your usual " + habit;
        return String.format(Locale.ROOT, "%s costs %.2f here.", instead, d.cost());
    }

    private String besideWords(double metres) {
        String beside = unit.beside(metres);
        return beside.isEmpty() ? "" : ", " + beside + " of this,";
    }

    static String tenths(double p) {
        long tenths = Math.round(10 * p);
        return tenths == 0 ? "hardly ever" : tenths == 10 ? "nearly always" : tenths + " in 10";
    }

    private Book.HoleGround ground(RoundPlan.HolePlan h, Hole hole, Optional<RoundPlan.Carry> carry) {
        List<Book.Shot> shots = h.shots().stream()
                .map(s -> new Book.Shot(s.from(), s.aim(), s.club(), s.room()))
                .toList();
        String words = "Chart of hole " + h.number() + ", play running up the page: "
                + h.shots().stream()
                        .map(s -> s.club() + " " + unit.of(s.aimMetres()))
                        .collect(Collectors.joining(", then "))
                + ".";
        return new Book.HoleGround(plan.course(), hole, h.tee(), shots, carry.map(RoundPlan.Carry::metres), words);
    }

    Book.Page green(RoundPlan.HolePlan h, ApproachAnswer.HoleApproach approach, List<Book.Slope> slopes) {
        Hole hole = plan.course().getHole(h.number());
        GreenFrame frame = GreenFrame.of(hole);
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(
                Role.FACTS,
                unit.whole(frame.back() - frame.front()) + " paces deep, " + unit.whole(frame.right() - frame.left())
                        + " wide"));
        middle(approach).ifPresent(l -> lines.add(new Line(Role.MISS, greenMiss(l))));
        lines.add(new Line(
                Role.NOTE, "From about " + unit.whole(approach.metres()) + ", aim beside the hole, in paces:"));
        lines.add(new Line(
                Role.SMALL,
                slopes.isEmpty()
                        ? "Slope not measured: none is shown."
                        : "Arrows: measured fall, pointing downhill, longer where it is steeper."));
        return new Book.Page(
                Book.Kind.GREEN,
                h.number(),
                "Green " + h.number(),
                lines,
                Optional.of(targets(approach)),
                Optional.of(new Book.GreenGround(
                        plan.course(),
                        hole,
                        frame.up(),
                        -frame.front(),
                        frame.back(),
                        -frame.left(),
                        frame.right(),
                        slopes,
                        approach.locations().stream()
                                .map(l -> new Book.Target(l.name(), l.place(), aim(l)))
                                .toList(),
                        "Chart of the green of hole " + h.number() + ", the way of play up the page, with paces.")));
    }

    private Book.Table targets(ApproachAnswer.HoleApproach approach) {
        List<List<String>> rows = new ArrayList<>();
        for (String depth : List.of("back", "middle", "front")) {
            List<String> cells = new ArrayList<>(List.of(depth));
            for (String width : List.of("left", "centre", "right")) {
                cells.add(zone(approach, depth + " " + width).map(this::beside).orElse("no green"));
            }
            rows.add(cells);
        }
        return new Book.Table(
                "Safe target for a hole in each part of the green",
                List.of("hole", "left", "centre", "right"),
                List.of(0.19, 0.27, 0.27, 0.27),
                rows);
    }

    private static Optional<ApproachAnswer.Location> zone(ApproachAnswer.HoleApproach approach, String name) {
        return approach.locations().stream().filter(l -> l.name().equals(name)).findFirst();
    }

    static Optional<ApproachAnswer.Location> middle(ApproachAnswer.HoleApproach approach) {
        return zone(approach, "middle centre")
                .or(() -> approach.locations().stream().findFirst());
    }

    /** The safe target; the hole itself where the two are as good as one. */
    private static Place aim(ApproachAnswer.Location l) {
        return isAtTheHole(l) ? l.place() : l.target();
    }

    private static boolean isAtTheHole(ApproachAnswer.Location l) {
        return Math.hypot(l.beyondMetres(), l.rightMetres()) < SAME_LINE_METRES;
    }

    /** Nobody aims by a pace: what is less than two is left out. */
    private String beside(ApproachAnswer.Location l) {
        List<String> out = new ArrayList<>();
        if (Math.abs(l.beyondMetres()) >= SAME_LINE_METRES) {
            out.add(unit.whole(Math.abs(l.beyondMetres())) + (l.beyondMetres() < 0 ? " short" : " long"));
        }
        if (Math.abs(l.rightMetres()) >= SAME_LINE_METRES) {
            out.add(unit.beside(l.rightMetres()));
        }
        return out.isEmpty() ? "at it" : String.join(", ", out);
    }

    /** The side to miss on, with the strokes from there, and the one to keep away from. */
    private static String greenMiss(ApproachAnswer.Location l) {
        String best = word(l.favoured());
        for (ApproachAnswer.Side side : ApproachAnswer.Side.values()) {
            if (!l.strokes().containsKey(side)) {
                return String.format(
                        Locale.ROOT,
                        "Miss %s (%.1f to hole out), never %s.",
                        best,
                        l.strokes().get(l.favoured()),
                        word(side));
            }
        }
        Map.Entry<ApproachAnswer.Side, Double> worst = l.strokes().entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow();
        return String.format(
                Locale.ROOT,
                "Miss %s (%.1f to hole out), not %s (%.1f).",
                best,
                l.strokes().get(l.favoured()),
                word(worst.getKey()),
                worst.getValue());
    }

    static String word(ApproachAnswer.Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    /** The slopes that somebody measured on a green, thinned to what an arrow has room for. */
    static List<Book.Slope> slopes(Optional<GreenSurface> surface, Hole hole) {
        if (surface.isEmpty()) {
            return List.of();
        }
        List<Book.Slope> out = new ArrayList<>();
        GreenFrame frame = GreenFrame.of(hole);
        for (double f = frame.front() + SLOPE_STEP_METRES / 2; f < frame.back(); f += SLOPE_STEP_METRES) {
            for (double r = frame.left() + SLOPE_STEP_METRES / 2; r < frame.right(); r += SLOPE_STEP_METRES) {
                Place p = frame.middle().offset(frame.up(), f, r);
                if (hole.green().contains(p) && hole.green().distanceToEdge(p) > 1.5) {
                    double east = surface.get().slopeEast(p.x(), p.y());
                    double north = surface.get().slopeNorth(p.x(), p.y());
                    out.add(new Book.Slope(p, Math.hypot(east, north), Math.atan2(-east, -north)));
                }
            }
        }
        return out;
    }
}
