package loopwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.action.ReadLengths;
import loopwright.action.UserFault;
import loopwright.scoring.CourseCard;
import loopwright.scoring.CourseCard.HoleCard;
import loopwright.scoring.HoleMark;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Oddity;
import loopwright.scoring.OddityCheck;

/** Asks for a round hole by hole, one short line each; what looks odd is asked once, right away. */
final class RoundDialog {
    private static final String HELP_COUNTS = """
            tee: i in play, l left, r right, x lost.  approach: g green, l, r, s short, o over.
            paces: of the first putt.  putts: 1c if the last was conceded.  score x: picked up.
            A dash leaves one out, the end of the line leaves out the rest.""";
    private static final String HELP_STROKES = """
            Every stroke is a lie and the distance to the hole: t tee, f fairway, r rough, s sand, x recovery,
            g green; feet on the green, else yards; t alone takes the length of the hole. Then, if you like, a
            slash and the club, and ! for each penalty stroke. Example: t/d! t/d f176/5 g24 g3
            After the last: c if that putt was conceded, p if you picked up.""";

    private final BufferedReader in;
    private final PrintWriter out;
    private final boolean strokes;
    private final Optional<CourseCard> card;

    RoundDialog(BufferedReader in, PrintWriter out, boolean strokes, Optional<CourseCard> card) {
        this.in = in;
        this.out = out;
        this.strokes = strokes;
        this.card = card;
    }

    /** The holes in the order of play; fewer than asked for if the player stops or the input ends. */
    List<HoleRecord> holes(List<Integer> numbers) {
        say("One line a hole. ? explains, u goes back a hole, . stops here and keeps what is there.");
        List<HoleRecord> done = new ArrayList<>();
        while (done.size() < numbers.size()) {
            int number = numbers.get(done.size());
            HoleShorthand shorthand = new HoleShorthand(number, card.flatMap(c -> c.findHole(number)));
            prompt(shorthand);
            Optional<String> line = line();
            if (line.isEmpty() || line.get().equals(".")) {
                return done;
            }
            switch (line.get()) {
                case "?" -> say(strokes ? HELP_STROKES : HELP_COUNTS);
                case "u" -> undo(done);
                case "" -> say("Type the hole, or ? for help.");
                default -> hole(shorthand, line.get()).ifPresent(done::add);
            }
        }
        return done;
    }

    private void undo(List<HoleRecord> done) {
        if (!done.isEmpty()) {
            done.remove(done.size() - 1);
        }
    }

    /** The hole as typed, once nothing is wrong and everything odd is confirmed; empty if the input ended. */
    private Optional<HoleRecord> hole(HoleShorthand shorthand, String typed) {
        HoleRecord hole;
        try {
            hole = strokes ? shorthand.strokes(typed) : shorthand.counts(typed);
        } catch (UserFault fault) {
            say("  " + fault.getMessage());
            return Optional.empty();
        }
        List<Oddity> odd = OddityCheck.of(hole);
        if (odd.isEmpty()) {
            return Optional.of(hole);
        }
        odd.forEach(o -> say("  " + OdditySentence.of(o, ReadLengths.USUAL)));
        out.print("  y if that is right, else the hole again: ");
        out.flush();
        String answer = line().orElse("y");
        return answer.equalsIgnoreCase("y") ? Optional.of(hole.with(HoleMark.CHECKED)) : hole(shorthand, answer);
    }

    private void prompt(HoleShorthand shorthand) {
        String facts = shorthand.card().map(RoundDialog::facts).orElse("");
        String fields = strokes ? "strokes" : shorthand.fields();
        out.print("hole " + shorthand.number() + facts + ", " + fields + ": ");
        out.flush();
    }

    private static String facts(HoleCard hole) {
        return hole.length().metres() > 0
                ? String.format(
                        Locale.ROOT,
                        " (par %d, %.0f yd)",
                        hole.par(),
                        hole.length().yards())
                : " (par " + hole.par() + ")";
    }

    private Optional<String> line() {
        try {
            return Optional.ofNullable(in.readLine()).map(String::strip);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void say(String text) {
        out.println(text);
        out.flush();
    }
}
