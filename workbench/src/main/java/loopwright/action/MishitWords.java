package loopwright.action;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.player.Mishit;
import loopwright.player.Player;
import loopwright.player.Swing;

/** Says what the rate of mishits holds, by the club that is mishit most: most of them still go most of the way. */
final class MishitWords {
    /** Under one ball in a hundred a kind is left out. */
    private static final double LEAST_SAID = 0.005;

    private MishitWords() {}

    static Optional<String> sentence(Player player) {
        return player.swings().stream()
                .max(Comparator.comparingDouble(s -> s.pattern().mishitRate()))
                .filter(s -> s.pattern().mishitRate() >= LEAST_SAID)
                .map(MishitWords::of);
    }

    private static String of(Swing swing) {
        List<Mishit> kinds = swing.pattern().mishits().stream()
                .filter(m -> m.rate() >= LEAST_SAID)
                .sorted(Comparator.comparingDouble(Mishit::rate).reversed())
                .toList();
        return String.format(
                Locale.ROOT,
                "Mishits are all strikes that are not solid, most of them no disaster: of %.0f in 100 with the %s %s.",
                100 * swing.pattern().mishitRate(),
                swing.label(),
                kinds.stream().map(MishitWords::kind).collect(Collectors.joining(", ")));
    }

    private static String kind(Mishit m) {
        return String.format(
                Locale.ROOT,
                "%.0f are %s and fly %.0f %% as far",
                100 * m.rate(),
                name(m.kind()),
                100 * m.carryFactor());
    }

    private static String name(Mishit.Kind kind) {
        return switch (kind) {
            case HEEL -> "off the heel";
            case TOE -> "off the toe";
            default -> kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }
}
