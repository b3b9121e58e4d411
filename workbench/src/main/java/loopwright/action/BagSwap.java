package loopwright.action;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.player.Club;
import loopwright.player.ClubTable;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.Swing;
import loopwright.units.Distance;

/**
 * A change of the bag as it is typed: "5-iron=7-wood 190 carry" (out, in, and how far the new one carries, if that is known),
 * "5-iron=" (out), "=7-wood" (in). A new club's pattern is what the prior has for the player's level and length; a stated
 * carry moves it.
 */
record BagSwap(String text, List<String> out, List<Swing> in) {
    /** Rule 4.1b. */
    static final int MOST_CLUBS = 14;

    private static final Pattern FORM =
            Pattern.compile("\\s*([^=]*?)\\s*=\\s*([^=]*?)(?:\\s+(\\d{2,3})\\s*(yd|m)?(?:\\s*carry)?)?\\s*");
    private static final double LEAST_CARRY_METRES = Distance.ofYards(20).metres();
    private static final double MOST_CARRY_METRES = Distance.ofYards(350).metres();

    /** Reads a change; a carry without a unit is in the reader's. */
    static BagSwap read(String text, Player player, LengthUnit unit) {
        Matcher m = FORM.matcher(text);
        if (!m.matches() || (m.group(1).isEmpty() && m.group(2).isEmpty())) {
            throw new UserFault("--swap " + text + " is no change; write club out=club in and its carry in "
                    + unit.words() + ", for example \"5-iron=7-wood 190 yd carry\".");
        }
        List<String> out = m.group(1).isEmpty() ? List.of() : List.of(inBag(m.group(1), player));
        List<Swing> in = m.group(2).isEmpty() ? List.of() : made(m.group(2), stated(m, unit), text, player, out);
        return new BagSwap(text, out, in);
    }

    private static String inBag(String name, Player player) {
        List<String> clubs = player.clubs().stream().map(Club::name).toList();
        String known = ClubTable.find(name).map(Club::name).orElse(name);
        if (!clubs.contains(known)) {
            throw new UserFault("--swap: \"" + name + "\" is not in this bag; the nearest is "
                    + Nearest.to(known, clubs) + " (it holds " + String.join(", ", clubs) + ").");
        }
        return known;
    }

    private static List<Swing> made(
            String name, OptionalDouble carryMetres, String text, Player player, List<String> out) {
        Club club = ClubTable.find(name)
                .orElseThrow(() -> new UserFault("--swap: \"" + name
                        + "\" is no club; write for example 7-wood, 4-hybrid, 5-iron or 50-wedge."));
        if (club.equals(ClubTable.PUTTER)) {
            throw new UserFault("--swap " + text + ": the putter stays; its odds are fitted from putts.");
        }
        if (player.clubs().contains(club) && !out.contains(club.name())) {
            throw new UserFault("--swap " + text + ": the " + club.name() + " is in the bag already.");
        }
        List<Swing> usual = PlayerPrior.of(player.level(), player.hand())
                .withDriverCarry(
                        Distance.ofMetres(player.swings().get(0).pattern().carryMetres()))
                .withBag(List.of(club))
                .player("new club")
                .swings();
        double usualCarry = usual.get(0).pattern().carryMetres();
        double factor = carryMetres.orElse(usualCarry) / usualCarry;
        return usual.stream()
                .map(s -> new Swing(s.club(), s.effort(), s.pattern().longer(factor), s.evidence()))
                .toList();
    }

    /** The carry that was typed; its own unit counts before the reader's. */
    private static OptionalDouble stated(Matcher m, LengthUnit unit) {
        if (m.group(3) == null) {
            return OptionalDouble.empty();
        }
        LengthUnit own = m.group(4) == null ? unit : m.group(4).equals("m") ? LengthUnit.METRES : LengthUnit.YARDS;
        double metres = Double.parseDouble(m.group(3)) * own.inMetres();
        if (metres < LEAST_CARRY_METRES || metres > MOST_CARRY_METRES) {
            throw new UserFault("--swap " + m.group() + ": a club carries " + own.atLeast(LEAST_CARRY_METRES) + " to "
                    + own.atMost(MOST_CARRY_METRES) + " " + own.sign() + ".");
        }
        return OptionalDouble.of(metres);
    }

    /** The player with the other bag; more than fourteen clubs, the putter among them, are refused. */
    Player apply(Player player) {
        List<Swing> swings = new ArrayList<>(player.swings());
        swings.removeIf(s -> out.contains(s.club().name()));
        swings.addAll(in);
        swings.sort(Comparator.comparingDouble((Swing s) -> s.pattern().carryMetres())
                .reversed());
        Player changed = new Player(
                player.name(),
                player.hand(),
                player.level(),
                swings,
                player.touchShots(),
                player.putting(),
                player.lostBallsPerRound());
        checkCount(changed.clubs());
        return changed;
    }

    /** Refuses more clubs than a round allows; the putter counts whether it is among them or not. */
    static void checkCount(List<Club> clubs) {
        List<String> besides = clubs.stream()
                .filter(c -> c.family() != Club.Family.PUTTER)
                .map(Club::name)
                .distinct()
                .toList();
        if (besides.size() + 1 > MOST_CLUBS) {
            throw new UserFault(String.format(
                    Locale.ROOT,
                    "That makes %d clubs with the putter; Rule 4.1b allows %d. Leave out %s of %s.",
                    besides.size() + 1,
                    MOST_CLUBS,
                    besides.size() == MOST_CLUBS ? "one" : String.valueOf(besides.size() + 1 - MOST_CLUBS),
                    String.join(", ", besides)));
        }
    }

    /** "7-wood for 5-iron", "5-iron left out", "7-wood added". */
    String words() {
        if (in.isEmpty()) {
            return out.get(0) + " left out";
        }
        String added = in.get(0).club().name();
        return out.isEmpty() ? added + " added" : added + " for " + out.get(0);
    }
}
