package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import loopwright.action.DrillCards;
import loopwright.action.PlayerFiles;
import loopwright.action.PracticePictures;
import loopwright.action.PracticePictures.DrillCard;
import loopwright.action.PracticePictures.Expected;
import loopwright.action.PracticeWords;
import loopwright.action.ResultFile;
import loopwright.action.UserFault;
import loopwright.player.PlayerProfile;
import loopwright.practice.Drill;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright practice drills}: the drills and what to expect of them. */
@Command(
        name = "drills",
        mixinStandardHelpOptions = true,
        description = "Shows the drills, or one, with the score this player should expect and that of a better one.")
public final class PracticeDrillsVerb implements Runnable {
    private static final double BETTER_BY = 10;

    private final DrillCards cards;
    private final PlayerFiles players;
    private final PracticePictures pictures;
    private final ResultFile results;

    @Parameters(arity = "0..1", paramLabel = "NAME", description = "One drill; without a name all are listed.")
    private @Nullable String name;

    @Option(names = "--player", required = true, paramLabel = "FILE", description = "The player file.")
    private @Nullable Path player;

    @Option(
            names = "--level",
            paramLabel = "SCORE",
            description = "The level to compare with, an average score. Default: ten strokes better than the player.")
    private @Nullable Double level;

    @Mixin
    private DrillOptions drills = new DrillOptions();

    @Option(names = "--picture", paramLabel = "FILE", description = "Draw the drill with its score sheet.")
    private @Nullable Path picture;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Write them as JSON (docs/schema/practice-drills.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public PracticeDrillsVerb(DrillCards cards, PlayerFiles players, PracticePictures pictures, ResultFile results) {
        this.cards = cards;
        this.players = players;
        this.pictures = pictures;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        PlayerProfile profile = players.read(Objects.requireNonNull(player));
        double better = level == null ? profile.player().level() - BETTER_BY : level;
        List<Drill> all = drills.drills(cards);
        List<DrillCard> shown = (name == null ? all : List.of(DrillCards.get(all, name)))
                .stream().map(d -> DrillCards.card(d, profile, better)).toList();
        if (name == null) {
            list(out, shown);
        } else {
            page(out, shown.get(0), profile);
        }
        if (json != null) {
            results.write(
                    json,
                    Map.of("drills", shown.stream().map(c -> row(c, profile)).toList()));
            out.println("Written to " + json + ".");
        }
        if (picture != null) {
            if (name == null) {
                throw new UserFault("--picture draws one drill; name it, for example circle-6.");
            }
            pictures.drawDrill(shown.get(0), picture);
            out.println("Drawn in " + picture + ".");
        }
    }

    private static void list(PrintWriter out, List<DrillCard> cards) {
        out.println("Mean score and where 8 of 10 lie, for " + cards.get(0).player() + " and for "
                + cards.get(0).level() + ":");
        for (DrillCard c : cards) {
            out.println(String.format(
                    Locale.ROOT,
                    "  %-22s %3d min  of %2d: %-16s %-16s %s",
                    c.drill().name(),
                    c.drill().minutes(),
                    c.drill().most(),
                    said(c.own()),
                    said(c.target()),
                    c.drill().purpose()));
        }
    }

    private static void page(PrintWriter out, DrillCard c, PlayerProfile profile) {
        Drill d = c.drill();
        out.println(d.name() + ", " + d.minutes() + " minutes, " + PracticeWords.of(d.facility()) + ": " + d.purpose());
        out.println("Set-up: " + d.setUp());
        out.println("Score: " + d.scoring());
        out.println("Tells: " + d.tells());
        out.println("Measures: " + DrillCards.measures(d, profile.player()) + ".");
        out.println(c.player() + " should expect " + said(c.own()) + " of " + d.most() + ", " + c.level() + " "
                + said(c.target()) + " (mean, and where 8 of 10 scores lie).");
        out.println("Log it with: loopwright practice log --player NAME --drill " + d.name() + " --score N");
    }

    private static String said(Expected e) {
        return String.format(Locale.ROOT, "%.1f (%d to %d)", e.mean(), e.low(), e.high());
    }

    private static Map<String, Object> row(DrillCard c, PlayerProfile profile) {
        Drill d = c.drill();
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("name", d.name());
        out.put("facility", PracticeWords.typed(d.facility()));
        out.put("minutes", d.minutes());
        out.put("purpose", d.purpose());
        out.put("setUp", d.setUp());
        out.put("scoring", d.scoring());
        out.put("tells", d.tells());
        out.put(
                "skills",
                d.skills(profile.player()).stream().map(PracticeWords::typed).toList());
        out.put("most", d.most());
        out.put("expected", expected(c.own()));
        out.put("level", c.level());
        out.put("expectedAtLevel", expected(c.target()));
        return out;
    }

    private static Map<String, Object> expected(Expected e) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("mean", e.mean());
        out.put("low", e.low());
        out.put("high", e.high());
        return out;
    }
}
