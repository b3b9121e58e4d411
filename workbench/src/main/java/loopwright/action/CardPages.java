package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import loopwright.action.Book.Line;
import loopwright.action.Book.Role;
import loopwright.units.Distance;

/** Words what is not about one hole: the cover, the card, what to expect, the pencil card and the slip for the end. */
final class CardPages {
    private static final int LAST_HOLES = 3;
    /** Strokes in hand shown on either side of an even chance. */
    private static final int MOST_ROWS = 7;

    private static final int[] PUTTS_FEET = {5, 10, 20};

    private final RoundPlan plan;
    private final LengthUnit unit;

    CardPages(RoundPlan plan, LengthUnit unit) {
        this.plan = plan;
        this.unit = unit;
    }

    Book.Page cover(String player, String day) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(Role.COVER_NAME, plan.course().name()));
        lines.add(new Line(
                Role.COVER_FACT,
                tees() + ", " + plan.holes().size() + " holes, par " + plan.par() + ", "
                        + unit.of(plan.lengthMetres())));
        lines.add(new Line(Role.COVER_FACT, player));
        lines.add(new Line(Role.COVER_FACT, "Target: " + plan.counting().words(plan.target()) + "."));
        lines.add(new Line(Role.NOTE, "Planned for: " + day + ". All lengths in " + unit.words() + "."));
        if (!plan.unsurveyed().isEmpty()) {
            lines.add(new Line(
                    Role.WARNING,
                    "Unsurveyed: on hole " + numbers(plan.unsurveyed())
                            + " nobody has confirmed trees, out of bounds and penalty areas. What the map lacks, this"
                            + " book lacks."));
        }
        for (String text : WARNINGS) {
            lines.add(new Line(Role.WARNING, text));
        }
        return new Book.Page(
                Book.Kind.COVER,
                0,
                plan.course().name(),
                lines,
                Optional.empty(),
                Optional.of(new Book.CourseGround(
                        plan.course(),
                        plan.holes().stream()
                                .map(h -> plan.course().getHole(h.number()))
                                .toList(),
                        "Chart of the course, north up.")));
    }

    private static final List<String> WARNINGS = List.of(
            "Made before the round, for preparation. Under Rule 4.3a paper like this may be carried: pages no larger than"
                    + " 7 x 4.25 in, greens no larger than 3/8 in to 5 yards (1:480). The committee may restrict it further, for"
                    + " example to an approved book (Model Local Rule G-11): ask before you play.",
            "The Rules, the committee, local rules and licensed professionals decide; where this book says otherwise, it"
                    + " is wrong.",
            "Never play while people are within reach; call out. Leave the course for lightning. Drink and rest in heat."
                    + " Stop if anything hurts.");

    private String tees() {
        return plan.tees().name().startsWith("tee ")
                ? plan.tees().name()
                : plan.tees().name() + " tees";
    }

    private static String numbers(List<Integer> holes) {
        return String.join(", ", holes.stream().map(String::valueOf).toList());
    }

    Book.Page card(IntFunction<HoleBriefing> briefing, IntFunction<ApproachAnswer.HoleApproach> approach) {
        List<List<String>> rows = new ArrayList<>();
        for (RoundPlan.HolePlan h : plan.holes()) {
            RoundPlan.ShotPlan tee = h.shots().get(0);
            rows.add(List.of(
                    Integer.toString(h.number()),
                    tee.club(),
                    unit.told(tee.line()).replaceFirst("^the ", "").replaceFirst("^a point ", ""),
                    miss(briefing.apply(h.number()), approach.apply(h.number()))));
        }
        Book.Table table = new Book.Table(
                "Tee shot of every hole: club, aim and the side to miss on",
                List.of("", "club", "aim", "miss"),
                List.of(0.09, 0.22, 0.54, 0.15),
                rows);
        return Book.Page.of(Book.Kind.CARD, "Card", List.of(), table);
    }

    /** The side to miss on; on a hole that is reached from the tee, the side of the green. */
    private static String miss(HoleBriefing b, ApproachAnswer.HoleApproach approach) {
        return b.teeMiss()
                .map(m -> m.matters() ? m.right() ? "right" : "left" : "either")
                .or(() -> HolePages.middle(approach).map(l -> HolePages.word(l.favoured())))
                .orElse("");
    }

    Book.Page expectations(HolePages words, Optional<Expectation> expectation) {
        List<Line> lines = new ArrayList<>();
        if (plan.decisions().isEmpty()) {
            lines.add(new Line(Role.DECISION, "Nowhere does leaving your habit pay beyond doubt."));
        }
        for (RoundPlan.Decision d : plan.decisions()) {
            lines.add(new Line(
                    Role.DECISION,
                    "Hole " + d.hole() + ", shot " + d.shot() + ": " + d.plan().club() + " "
                            + words.toward(d.plan()) + ". "
                            + words.decision(d)));
        }
        sentences(expectation).forEach(t -> lines.add(new Line(Role.EXPECTATION, t)));
        return Book.Page.of(Book.Kind.EXPECTATIONS, "Before the first tee", lines);
    }

    private List<String> sentences(Optional<Expectation> expectation) {
        List<String> out = new ArrayList<>();
        String tenths = HolePages.tenths(plan.targetProbability());
        String chance = tenths.endsWith("in 10") ? tenths + " rounds" : tenths;
        out.add(String.format(
                Locale.ROOT,
                "Expect %.1f. %s: %s.",
                plan.counting().form() == Counting.Form.STABLEFORD
                        ? -plan.total().mean()
                        : plan.total().mean(),
                plan.counting().words(plan.target()),
                chance));
        expectation.flatMap(Expectation::atTarget).ifPresent(c -> out.add(beaten(c)));
        expectation.ifPresent(e -> out.add(putts(e)));
        return out;
    }

    private String beaten(Expectation.Counts c) {
        return String.format(
                Locale.ROOT,
                "A round that gets there: about %s, %s, %.0f double or worse; %s in regulation, %s, %s.",
                some(c.birdiesOrBetter() + c.pars(), "par or better", "pars or better"),
                some(c.bogeys(), "bogey", "bogeys"),
                c.doubles() + c.triplesOrWorse(),
                some(c.greens(), "green", "greens"),
                some(c.putts(), "putt", "putts"),
                some(c.penalties(), "penalty stroke", "penalty strokes"));
    }

    private static String some(double average, String one, String several) {
        long rounded = Math.round(average);
        return rounded + " " + (rounded == 1 ? one : several);
    }

    private static String putts(Expectation e) {
        List<String> parts = new ArrayList<>();
        for (int feet : PUTTS_FEET) {
            for (Expectation.Putt p : e.putts()) {
                if (Math.abs(p.metres() - feet * Distance.METRES_PER_FOOT) < 1e-6) {
                    parts.add(String.format(Locale.ROOT, "%d ft %.0f", feet, 100 * p.one()));
                }
            }
        }
        return "Of 100 putts on a level green you hole: from " + String.join(", from ", parts) + ".";
    }

    /** Club and effort for every five yards or metres, from a fairway. */
    Book.Page wedges(WedgeTable wedges) {
        List<List<String>> rows = new ArrayList<>();
        for (WedgeTable.Row r : wedges.rows()) {
            rows.add(List.of(
                    Long.toString(unit.whole(r.metres())),
                    r.shot(),
                    String.format(Locale.ROOT, "%.0f", 100 * r.onGreen()),
                    Long.toString(unit.whole(r.nearMetres()))));
        }
        return Book.Page.of(
                Book.Kind.WEDGES,
                "Wedge table",
                List.of(new Line(
                        Role.NOTE,
                        "Fewest strokes from the fairway on level ground: how many of 100 find a green "
                                + unit.whole(WedgeTable.GREEN_METRES)
                                + " paces across, and how near the hole 8 in 10 stop."
                                + (wedges.measure().isEmpty()
                                        ? ""
                                        : " Mostly assumed, not measured: " + String.join(", ", wedges.measure())
                                                + "."))),
                new Book.Table(
                        "Wedge table",
                        List.of(unit.sign(), "club and effort", "on green", "within"),
                        List.of(0.14, 0.5, 0.19, 0.17),
                        rows));
    }

    /** Tier b of a round's record, three rings and four figures a hole. */
    Book.Page pencilCard() {
        List<List<String>> rows = new ArrayList<>();
        for (RoundPlan.HolePlan h : plan.holes()) {
            rows.add(List.of(
                    h.number() + " / " + h.par(),
                    "",
                    h.par() == 3 ? "" : spaced("ilrx"),
                    spaced("glrso"),
                    "",
                    "",
                    "",
                    ""));
        }
        Book.Table table = new Book.Table(
                "A row to fill in for every hole",
                List.of("hole", "score", "tee ball", "approach", "pen", "chip", "pace", "putt"),
                List.of(0.13, 0.115, 0.19, 0.235, 0.08, 0.085, 0.09, 0.075),
                rows);
        return Book.Page.of(
                Book.Kind.PENCIL_CARD,
                "Pencil card",
                List.of(new Line(
                        Role.NOTE,
                        "Ring: tee ball in play, left, right, lost (x); approach on the green, left, right, short, over."
                                + " Write: score, penalty strokes, chips, paces of the first putt, putts.")),
                table);
    }

    /** Letters to put a ring round, far enough apart for a pencil. */
    private static String spaced(String letters) {
        return letters.replaceAll("(?<=.)(?=.)", "\u00a0\u00a0\u00a0");
    }

    /** Nothing is certain, and nothing hopeless, until the last putt. */
    private static String inHundred(double chance) {
        long rounded = Math.round(100 * chance);
        return rounded >= 100 ? "over 99" : rounded < 1 ? "under 1" : Long.toString(rounded);
    }

    /** The chances on the last tees; on a slip of its own, because not every player wants to know. */
    Optional<Book.Page> stateOfPlay(HolePages words) {
        return plan.stateOfPlay().map(state -> {
            List<List<String>> rows = new ArrayList<>();
            int count = plan.holes().size();
            for (RoundPlan.HolePlan h : plan.holes().subList(Math.max(0, count - LAST_HOLES), count)) {
                List<StateOfPlay.OnTee> tees = state.onTee(h.number());
                int from = Math.max(0, tees.size() / 2 - MOST_ROWS / 2);
                for (StateOfPlay.OnTee t : tees.subList(from, Math.min(tees.size(), from + MOST_ROWS))) {
                    rows.add(List.of(
                            Integer.toString(h.number()),
                            Integer.toString(Math.abs(t.inHand())),
                            inHundred(t.targetPlay()),
                            t.other()
                                    .map(o -> o.club() + " " + words.at(o.landmark()))
                                    .orElse("as planned")));
                }
            }
            String inHand = plan.counting().form() == Counting.Form.STABLEFORD ? "to make" : "in hand";
            return Book.Page.of(
                    Book.Kind.STATE_OF_PLAY,
                    "The last holes",
                    List.of(new Line(
                            Role.NOTE,
                            "Chance in 100 of the target, by strokes in hand on the tee, and the tee shot for it.")),
                    new Book.Table(
                            "Chances on the last tees",
                            List.of("hole", inHand, "in 100", "tee shot"),
                            List.of(0.13, 0.16, 0.17, 0.54),
                            rows));
        });
    }
}
