package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A round typed hole by hole, and how many keys that takes. */
class RoundAddIT {
    private static final String PARS = "443545344444543454";

    /** An ordinary round of 89, invented: counts of each hole. */
    private static final List<String> COUNTS = List.of(
            "5 l s 0 1 4 2",
            "5 i s 0 1 3 2",
            "3 g 0 0 9 2",
            "7 x r 1 1 5 2",
            "4 i g 0 0 7 2",
            "6 r g 0 0 12 2",
            "4 s 0 1 4 2",
            "5 i o 0 1 2 2",
            "4 i g 0 0 6 2",
            "5 r s 0 1 6 2",
            "5 l s 0 1 4 2",
            "4 i g 0 0 11 2",
            "6 i r 0 1 3 2",
            "6 r l 1 1 2 1",
            "4 r 0 1 5 2",
            "5 i s 0 1 7 2",
            "6 i g 0 0 8 2",
            "5 l s 0 1 3 2");

    /** The same player on another day, with every stroke and its club. */
    private static final List<String> STROKES = List.of(
            "t371/d r152/7 s21/w g11 g2",
            "t402/d f176/5 r18/w g9 g1",
            "t158/6 g27 g3",
            "t502/d! t502/d f270/3 f95/w g24 g3",
            "t344/d f101/w g21 g2",
            "t520/d r290/4 f120/9 g36 g4",
            "t165/6 r14/w g12 g2",
            "t388/d f160/6 f25/w g6 g1",
            "t351/d f118/9 g18 g2",
            "t410/d r190/4 r30/w g18 g3",
            "t395/d r171/5 s16/w g12 g2",
            "t372/d f139/8 g33 g4",
            "t531/d f300/3 r102/w r12/w g9 g1",
            "t377/d r150/7! f150/7 r11/w g5",
            "t171/5 r16/w g15 g3",
            "t420/d f181/5 f22/w g21 g2",
            "t540/d f310/3 f92/w g24 g3",
            "t399/d r168/5 f19/w g9 g2");

    @TempDir
    Path folder;

    private static String lines(List<String> holes) {
        return String.join("\n", holes) + "\n";
    }

    private Typed add(String typed, String... more) {
        String[] args = new String[3 + more.length];
        args[0] = "round";
        args[1] = "add";
        args[2] = folder.resolve("round.csv").toString();
        System.arraycopy(more, 0, args, 3, more.length);
        return Typed.answering(typed, args);
    }

    private Typed review() {
        return Typed.run("round", "review", folder.resolve("round.csv").toString());
    }

    @Test
    void anEighteenHoleCardOfCountsIsTypedAndReviewed() {
        Typed added = add(lines(COUNTS), "--pars", PARS, "--date", "2026-05-31");
        assertThat(added.err()).isEmpty();
        assertThat(added.exitCode()).isZero();
        assertThat(review().out()).contains("Round 2026-05-31, 18 holes: 89 (+16)", "putts 35", "penalty strokes 2");
    }

    @Test
    void anEighteenHoleCardOfStrokesIsTypedAndReviewed() {
        Typed added = add(lines(STROKES), "--strokes", "--pars", PARS, "--date", "2026-05-31");
        assertThat(added.err()).isEmpty();
        assertThat(review().out()).contains("18 holes: 8", "tee shots (par 4 and longer)", "penalty strokes");
    }

    /**
     * Keystroke-level model (Card, Moran and Newell 1980; from memory): 0.5 s for each key of a code, 1.35 s to think
     * before each unit, which is a hole of counts (one look at the card) or a stroke.
     */
    @Test
    void aCardTakesUnderThreeMinutesInCountsAndUnderTenInStrokes() {
        double counts = 0.5 * lines(COUNTS).length() + 1.35 * COUNTS.size();
        long strokes = STROKES.stream().mapToLong(h -> h.split(" ", -1).length).sum();
        double shots = 0.5 * lines(STROKES).length() + 1.35 * strokes;
        assertThat(counts).isLessThan(180);
        assertThat(shots).isLessThan(600);
    }

    @Test
    void aMistakeIsAskedAgainAndUndoGoesBackAHole() {
        Typed added = add("5 q\n5 l\nu\n6 l\n?\n4 g\n.\n", "--pars", "43", "--holes", "2");
        assertThat(added.out()).contains("\"q\" is no tee ball", "A dash leaves one out");
        assertThat(review().out()).contains("2 holes: 10 (+3)");
    }

    @Test
    void whatLooksOddIsAskedOnce() {
        Typed added =
                add("t400 f150 g150\ny\nt400 g30 g60\nt400 g30 g6\n", "--strokes", "--pars", "44", "--holes", "2");
        assertThat(added.out())
                .contains("Hole 1, stroke 3: a putt from 50 yd.", "Hole 2, stroke 3: the ball is farther");
        assertThat(review().out()).contains("2 holes: 6 (-2)").doesNotContain("Please look");
    }

    @Test
    void whatWasTypedIsKeptWhenTheInputEnds() {
        Typed added = add("5\n4\n", "--start-hole", "10");
        assertThat(added.out()).contains("Wrote 2 holes");
        assertThat(review().out()).contains("2 holes from hole 10: 9");
    }

    @Test
    void anEighteenBegunAtTenEndsAtNine() throws IOException {
        add(lines(COUNTS.stream().map(h -> "5").toList()), "--start-hole", "10");
        List<String> rows = Files.readAllLines(folder.resolve("round.csv"));
        assertThat(rows.get(1)).contains(",10,");
        assertThat(rows.get(18)).contains(",9,");
    }

    @Test
    void nothingIsWrittenForNothingAndNoRoundIsOverwritten() throws IOException {
        assertThat(add("").exitCode()).isEqualTo(2);
        assertThat(folder.resolve("round.csv")).doesNotExist();
        Files.writeString(folder.resolve("round.csv"), "mine");
        Typed again = add("5\n");
        assertThat(again.exitCode()).isEqualTo(2);
        assertThat(again.err().strip()).hasLineCount(1).contains("exists already");
        assertThat(folder.resolve("round.csv")).hasContent("mine");
    }

    @Test
    void badRequestsAreRefusedBeforeAnythingIsTyped() {
        assertThat(add("5\n", "--pars", "44").err().strip()).hasLineCount(1).contains("18 digits");
        assertThat(add("5\n", "--start-hole", "40").err().strip())
                .hasLineCount(1)
                .contains("no hole 40");
        assertThat(add("5\n", "--holes", "0").err().strip()).hasLineCount(1).contains("1 to 36");
    }
}
