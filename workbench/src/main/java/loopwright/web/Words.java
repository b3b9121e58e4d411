package loopwright.web;

import java.util.Locale;
import java.util.Map;
import loopwright.action.RoundPlan;
import loopwright.ground.Surface;

/** Numbers and choices of a plan as words. */
final class Words {
    private Words() {}

    static String of(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }

    /** A chance: "8 %", with a decimal below 10. */
    static String percent(double share) {
        double percent = 100 * share;
        return of(percent < 9.95 ? "%.1f %%" : "%.0f %%", percent);
    }

    static String lie(Surface surface) {
        return Texts.say("lie." + surface.name());
    }

    /** "driver (8 yd left)". */
    static String club(String club, double offsetMetres, Units units) {
        String side = units.side(offsetMetres);
        return side.isEmpty() ? club : club + " (" + side + ")";
    }

    /** "driver at the left bunker (8 yd left)". */
    static String aimed(String club, String landmark, double offsetMetres, Units units) {
        boolean beside = RoundPlan.isBeside(landmark);
        String at = (beside ? ", " : " ") + units.lengths().told(RoundPlan.toward(landmark));
        String side = beside ? "" : units.side(offsetMetres);
        return club + at + (side.isEmpty() ? "" : " (" + side + ")");
    }

    /** What another choice costs: "+0.12", or that it makes no difference. */
    static String cost(RoundPlan.Alternative other) {
        return other.same() ? Texts.say("ways.same") : of("%+.2f", other.cost());
    }

    /** Where a shot ends, likeliest first, chances under half a per cent left out. */
    static String finish(Map<Surface, Double> shares) {
        return shares.entrySet().stream()
                .filter(e -> e.getValue() >= 0.005)
                .sorted(Map.Entry.<Surface, Double>comparingByValue().reversed())
                .map(e -> lie(e.getKey()) + " " + percent(e.getValue()))
                .collect(java.util.stream.Collectors.joining(", "));
    }
}
