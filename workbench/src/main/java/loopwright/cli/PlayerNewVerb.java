package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loopwright.action.CountText;
import loopwright.action.FitPlayer;
import loopwright.action.FitResult;
import loopwright.action.Interview;
import loopwright.action.ReadLengths;
import loopwright.action.UserFault;
import loopwright.numerics.Watch;
import loopwright.player.BallCount;
import loopwright.player.Club;
import loopwright.player.ClubTable;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright player new}: a player from an interview, counted balls and shot lists, in any mix. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = "Makes a player from what he says, what was counted and what was measured, in any mix.",
        footer = {"", "Without any answer on the command line the questions are asked one by one."})
public final class PlayerNewVerb implements Runnable {
    /** Common practice, no source: what a drive runs where only its total is known, and a 7-iron. */
    private static final double DRIVER_RUN_YARDS = 20;

    private static final double SEVEN_IRON_RUN_YARDS = 6;

    private static final double MOST_LOST = 30;

    private static final String COUNT_QUESTION =
            "Counted balls, as in \"10 drives: 6 inside 30 yd, 3 right, 1 topped\" (empty: none)";

    private final FitPlayer action;

    @Option(names = "--name", paramLabel = "TEXT", description = "The player's name.")
    private String name = "player";

    @Option(names = "--hand", paramLabel = "right|left", description = "The player's hand (right).")
    private String hand = "right";

    @Option(names = "--level", paramLabel = "SCORE", description = "Average 18-hole score, 60 to 130.")
    private @Nullable Double level;

    @Option(names = "--scores", paramLabel = "N", split = ",", description = "Last 18-hole scores, with commas.")
    private List<Integer> scores = new ArrayList<>();

    @Option(names = "--driver-carry", paramLabel = "LENGTH", description = "How far the driver carries.")
    private @Nullable Double driverCarry;

    @Option(
            names = "--driver-total",
            paramLabel = "LENGTH",
            description = "How far a drive finishes, if the carry is not known.")
    private @Nullable Double driverTotal;

    @Option(names = "--7-iron-carry", paramLabel = "LENGTH", description = "How far the 7-iron carries.")
    private @Nullable Double sevenCarry;

    @Option(
            names = "--7-iron-total",
            paramLabel = "LENGTH",
            description = "How far a 7-iron finishes, if the carry is not known.")
    private @Nullable Double sevenTotal;

    @Option(names = "--miss", paramLabel = "left|right|none", description = "Side of the usual miss.")
    private String miss = "none";

    @Option(names = "--lost-balls", paramLabel = "N", description = "Balls lost a round.")
    private @Nullable Double lostBalls;

    @Option(
            names = "--bag",
            paramLabel = "CLUB",
            split = ",",
            description = "The clubs, with commas; otherwise a usual bag.")
    private List<String> bag = new ArrayList<>();

    @Option(
            names = "--count",
            paramLabel = "TEXT",
            description = "Counted balls: \"10 drives: 6 inside 30 yd, 3 right, 1 topped\".")
    private List<String> counts = new ArrayList<>();

    @Option(
            names = "--on",
            paramLabel = "range|mat|course",
            description = "Where balls were counted or measured (range).")
    private String on = "range";

    @Option(names = "--shots", paramLabel = "FILE", description = "Shot list, may be given several times.")
    private List<Path> shots = new ArrayList<>();

    @Option(
            names = "--counts",
            paramLabel = "FILE",
            description = "Counted balls in a file, as \"fit --counts\" reads it.")
    private List<Path> countFiles = new ArrayList<>();

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the sampler (1).")
    private long seed = 1;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "Player file to write (JSON).")
    private Path out = Path.of("");

    @Option(names = "--picture", paramLabel = "FILE", description = "Picture of the patterns to write (PNG or SVG).")
    private @Nullable Path picture;

    @Option(names = "--json", paramLabel = "FILE", description = "Numbers to write (docs/schema/fit.schema.json).")
    private @Nullable Path json;

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private HabitOptions habits = new HabitOptions();

    @Spec
    private @Nullable CommandSpec spec;

    public PlayerNewVerb(FitPlayer action) {
        this.action = action;
    }

    @Override
    public void run() {
        if (spec == null) {
            throw new IllegalStateException("the verb is run by the command line");
        }
        ReadLengths lengths = units.lengths();
        PrintWriter page = spec.commandLine().getOut();
        if (nothingSaid()) {
            ask(new Questions(page));
        }
        List<BallCount> counted = new ArrayList<>();
        for (String text : counts) {
            counted.addAll(CountText.parse(text, FitVerb.setting(on), 0));
        }
        FitResult result = action.fit(
                new FitPlayer.Request(
                        interview(), files(), Map.of(), FitVerb.setting(on), counted, List.of(), habits.habit(), seed),
                new FitPlayer.Targets(Optional.of(out), Optional.ofNullable(json), Optional.ofNullable(picture)),
                Watch.NONE);
        new BagPage(page, lengths).print(result);
        page.println("Player written to " + out + ".");
        if (picture != null) {
            page.println("Picture written to " + picture + ".");
        }
        page.flush();
    }

    private boolean nothingSaid() {
        return level == null
                && scores.isEmpty()
                && driverCarry == null
                && driverTotal == null
                && sevenCarry == null
                && sevenTotal == null
                && counts.isEmpty()
                && files().isEmpty();
    }

    private List<Path> files() {
        return Stream.concat(shots.stream(), countFiles.stream()).toList();
    }

    private void ask(Questions questions) {
        name = questions.text("Name", name);
        hand = questions.read("Right- or left-handed (right, left)", hand, text -> {
            FitVerb.hand(text);
            return text;
        });
        scores.addAll(questions.wholeNumbers(
                "Last 18-hole scores, with commas (empty: not known)",
                Interview.LOWEST_SCORE,
                Interview.HIGHEST_SCORE));
        if (scores.isEmpty()) {
            level = questions
                    .number("Average 18-hole score, roughly", Interview.LOWEST_LEVEL, Interview.HIGHEST_LEVEL)
                    .orElse(null);
        }
        driverCarry = length(questions, "Driver carry");
        if (driverCarry == null) {
            driverTotal = length(questions, "Length of a whole drive");
        }
        sevenCarry = length(questions, "7-iron carry");
        if (sevenCarry == null) {
            sevenTotal = length(questions, "Length of a whole 7-iron shot");
        }
        miss = questions.read("Usual miss (left, right, none)", miss, text -> {
            missesRight(text);
            return text;
        });
        lostBalls = questions.number("Balls lost a round", 0, MOST_LOST).orElse(null);
        bag.addAll(questions.read("Clubs in the bag, with commas (empty: a usual bag)", "", text -> {
            List<String> clubs = text.isBlank() ? List.of() : List.of(text.split(",", -1));
            Interview.checkBag(clubs.stream().map(PlayerNewVerb::club).toList());
            return clubs;
        }));
        for (String asked = COUNT_QUESTION; ; asked = "More counted balls (empty: no more)") {
            String sentence = questions.read(asked, "", this::countOrNothing);
            if (sentence.isEmpty()) {
                return;
            }
            counts.add(sentence);
        }
    }

    private @Nullable Double length(Questions questions, String question) {
        return questions
                .number(
                        question + " in " + units.unit().words(),
                        units.least(FitVerb.SHORTEST_YARDS),
                        units.most(FitVerb.LONGEST_YARDS))
                .orElse(null);
    }

    private String countOrNothing(String text) {
        if (!text.isEmpty()) {
            CountText.parse(text, FitVerb.setting(on), 0);
        }
        return text;
    }

    private Interview interview() {
        if (lostBalls != null && !(lostBalls >= 0 && lostBalls <= MOST_LOST)) {
            throw new UserFault("--lost-balls " + UserFault.typed(lostBalls)
                    + " is no number of balls a round; 0 to 30 is accepted.");
        }
        return new Interview(
                name,
                FitVerb.hand(hand),
                level == null ? OptionalDouble.empty() : OptionalDouble.of(level),
                scores,
                length("--driver", driverCarry, driverTotal, DRIVER_RUN_YARDS),
                length("--7-iron", sevenCarry, sevenTotal, SEVEN_IRON_RUN_YARDS),
                missesRight(miss),
                lostBalls == null ? OptionalDouble.empty() : OptionalDouble.of(lostBalls),
                bag.stream().map(PlayerNewVerb::club).toList());
    }

    private Optional<Distance> length(String option, @Nullable Double carry, @Nullable Double total, double run) {
        if (carry != null) {
            return Optional.of(FitVerb.length(option + "-carry", carry, units));
        }
        if (total == null) {
            return Optional.empty();
        }
        double checked = FitVerb.length(option + "-total", total, units).yards();
        // a short drive runs less: never more than a tenth of its length
        return Optional.of(Distance.ofYards(checked - Math.min(run, checked / 10)));
    }

    private static Optional<Boolean> missesRight(String miss) {
        return switch (miss) {
            case "none" -> Optional.empty();
            case "right" -> Optional.of(true);
            case "left" -> Optional.of(false);
            default -> throw new UserFault("--miss " + miss + " is unknown; left, right or none is accepted.");
        };
    }

    private static Club club(String text) {
        return ClubTable.find(text)
                .orElseThrow(() -> new UserFault("--bag: \"" + text.strip() + "\" is no club; driver, 3-wood, 4-hybrid,"
                        + " 7-iron, pitching wedge, 56-wedge or putter are accepted."));
    }
}
