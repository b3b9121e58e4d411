package loopwright.web;

import java.util.Locale;
import loopwright.action.HolePicture;
import loopwright.action.HoleScreens.Screen;
import loopwright.action.SolvedHole;
import loopwright.geo.Place;

/** The chart of a hole with its three handles: ball, aim and hole location; each is moved by dragging or by arrow keys. */
final class HoleSvg {
    private final Screen screen;
    private final SolvedHole hole;
    private final Units units;
    private final String ground;

    /** {@code ground} is the address of the picture of the ground. */
    HoleSvg(Screen screen, SolvedHole hole, Units units, String ground) {
        this.units = units;
        this.ground = ground;
        this.screen = screen;
        this.hole = hole;
    }

    String svg(HolePicture picture) {
        var first = hole.plan().shots().get(0);
        double[] tee = screen.at(hole.plan().tee());
        double[] before = screen.at(hole.plan().tee().along(0, 1));
        double unit = Math.hypot(before[0] - tee[0], before[1] - tee[1]) * units.metres(1);
        return String.format(
                        Locale.ROOT,
                        "<svg class=\"of-hole\" viewBox=\"0 0 %.0f %.0f\" data-length=\"%.3f\" data-unit=\"%s\" data-club=\"%s\""
                                + " role=\"group\" aria-label=\"%s\">",
                        screen.width(),
                        screen.height(),
                        unit,
                        units.lengths().words(),
                        escaped(first.club()),
                        escaped(Texts.say("hole.picture", hole.plan().number())))
                + "<image class=\"ground\" aria-hidden=\"true\" width=\"100%\" height=\"100%\" href=\""
                + escaped(ground)
                + "\"/><g class=\"contours\" aria-hidden=\"true\"></g><g class=\"aims\" aria-hidden=\"true\"></g>"
                + "<g class=\"over\" aria-hidden=\"true\">"
                + screen.over(picture)
                + "</g>"
                + handle("pin", hole.hole().holeLocation(), -32, "M0 0V-38L11 -33L0 -28")
                + handle("aim", first.aim(), 0, "M-9 0H9M0 -9V9")
                + handle("ball", hole.plan().tee(), 0, "M-4 0A4 4 0 1 0 4 0A4 4 0 1 0 -4 0")
                + "</svg>";
    }

    /** {@code grip} is how far above its place a handle is held, so that an aim at the hole does not cover the flag. */
    private String handle(String name, Place place, int grip, String shape) {
        double[] at = screen.at(place);
        return String.format(
                Locale.ROOT,
                "<g class=\"handle %s\" data-handle=\"%s\" transform=\"translate(%.1f %.1f)\" tabindex=\"0\""
                        + " role=\"slider\" aria-label=\"%s\" aria-valuemin=\"0\" aria-valuemax=\"1000\""
                        + " aria-valuenow=\"%.0f\"><circle cy=\"%d\" r=\"15\"/><path d=\"%s\"/></g>",
                name,
                name,
                at[0],
                at[1],
                escaped(Texts.say("handle." + name)),
                units.number(place.distanceTo(hole.hole().holeLocation())),
                grip,
                shape);
    }

    static String escaped(String text) {
        return j2html.utils.EscapeUtil.escape(text);
    }
}
