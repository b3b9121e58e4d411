package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.action.PracticePictures.DrillCard;
import loopwright.action.PracticePictures.Expected;
import loopwright.player.DayEffect;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.PlayerProfile;
import loopwright.practice.Drill;
import loopwright.practice.DrillBook;
import loopwright.practice.Skill;
import loopwright.strategy.ScoreDistribution;
import loopwright.units.Distance;

/** The drills there are, and what a player should expect of them. */
public final class DrillCards {
    /** Room for a tee shot that most first holes have: 35 yd, assumed. */
    public static final double USUAL_CORRIDOR_METRES = 32;

    private static final double TENTH = 0.1;
    private static final double LOWEST_LEVEL = 60;

    private final DrillFiles files;

    public DrillCards(DrillFiles files) {
        this.files = files;
    }

    /** The program's drills, then the coach's. */
    public List<Drill> drills(Optional<Path> own, double corridorMetres) {
        List<Drill> out = new ArrayList<>(DrillBook.all(corridorMetres));
        for (Drill drill : own.map(files::read).orElse(List.of())) {
            if (out.stream().anyMatch(d -> d.name().equals(drill.name()))) {
                throw new UserFault(own.orElseThrow() + ": there is a drill \"" + drill.name()
                        + "\" already; give yours another name.");
            }
            out.add(drill);
        }
        return out;
    }

    /** The drill of a name. */
    public static Drill get(List<Drill> drills, String name) {
        return drills.stream()
                .filter(d -> d.name().equals(name.strip()))
                .findFirst()
                .orElseThrow(() -> new UserFault("There is no drill \"" + name + "\"; there are "
                        + drills.stream().map(Drill::name).collect(Collectors.joining(", ")) + "."));
    }

    /** A drill with what this player and one of another level, with the same lengths, should expect. */
    public static DrillCard card(Drill drill, PlayerProfile profile, double level) {
        Player player = profile.player();
        Player target = PlayerPrior.of(Math.max(LOWEST_LEVEL, Math.min(level, player.level())), player.hand())
                .withDriverCarry(
                        Distance.ofMetres(player.swings().get(0).pattern().carryMetres()))
                .withBag(player.clubs())
                .player("target");
        return new DrillCard(
                drill,
                player.name(),
                player.hand(),
                expected(drill, player, profile.day()),
                String.format(Locale.ROOT, "a player who scores %.0f", target.level()),
                expected(drill, target, profile.day()));
    }

    private static Expected expected(Drill drill, Player player, DayEffect days) {
        ScoreDistribution law = drill.scores(player, days, PlanDay.USUAL.greens());
        return new Expected(law.mean(), Drill.quantile(law, TENTH), Drill.quantile(law, 1 - TENTH));
    }

    /** The skills a drill tells about, in words. */
    public static String measures(Drill drill, Player player) {
        return drill.skills(player).stream()
                .map((Skill s) -> PracticeWords.of(s))
                .collect(Collectors.joining(", "));
    }
}
