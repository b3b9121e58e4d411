package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.KeepRounds.Kept;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.RoundRecord;

/**
 * Takes rounds in that were written on a sheet, on the bench or in a table. A sheet names its recording ("sheet
 * 3f9a..."): the same recording is taken once, however often it is sent; another recording of the same round is kept
 * beside the first, and said so.
 */
public final class TakeRounds {
    private static final Pattern PLAYER = Pattern.compile("(?m)^# player ([a-z0-9-]{1,40})\\s*$");
    private static final String RECORDING = "sheet ";

    private final KeepRounds rounds;
    private final RoundFile files;

    public TakeRounds(KeepRounds rounds, RoundFile files) {
        this.rounds = rounds;
        this.files = files;
    }

    /** The player a sheet was made for, if the text is one. */
    public static Optional<String> playerOf(String text) {
        Matcher m = PLAYER.matcher(text);
        return m.find() ? Optional.of(m.group(1)) : Optional.empty();
    }

    /**
     * What became of a file.
     *
     * @param kept new rounds
     * @param known rounds that were taken in before
     * @param changed rounds that took the place of an earlier sending
     * @param beside days of which there is another record now
     */
    public record Taken(List<KeptRound> kept, int known, int changed, List<String> beside) {
        public Taken {
            kept = List.copyOf(kept);
            beside = List.copyOf(beside);
        }
    }

    /**
     * Takes all rounds of a text, or none.
     *
     * @param label what to call it in a sentence
     * @param replace the user's word that a recording may take the place of its earlier sending
     */
    public Taken take(String player, String label, String text, boolean replace) {
        List<RoundRecord> read = RoundReviews.usable(label, files.readText(label, text), Optional.empty(), false);
        List<Kept> before = rounds.rounds(player);
        List<RoundRecord> fresh = new ArrayList<>();
        List<Kept> earlier = new ArrayList<>();
        List<RoundRecord> later = new ArrayList<>();
        int known = 0;
        for (RoundRecord round : read) {
            Optional<Kept> same = before.stream()
                    .filter(k -> isRecording(round) ? k.record().name().equals(round.name()) : equal(k.record(), round))
                    .findFirst();
            if (same.isEmpty()) {
                fresh.add(round);
            } else if (equal(same.get().record(), round)) {
                known++;
            } else if (replace) {
                earlier.add(same.get());
                later.add(round);
            } else {
                throw new UserFault("This recording was taken in before, of "
                        + same.get().entry().day()
                        + ", and differs now on hole " + different(same.get().record(), round)
                        + ". Tick the box that says it may take the place of what was sent before, and send it again.");
            }
        }
        List<KeptRound> kept = new ArrayList<>();
        fresh.forEach(round -> kept.add(rounds.add(player, round)));
        for (int i = 0; i < later.size(); i++) {
            rounds.change(player, earlier.get(i).entry().id(), later.get(i));
        }
        return new Taken(kept, known, later.size(), beside(before, kept));
    }

    private static boolean isRecording(RoundRecord round) {
        return round.name().startsWith(RECORDING);
    }

    private boolean equal(RoundRecord a, RoundRecord b) {
        return files.text(List.of(a)).equals(files.text(List.of(b)));
    }

    private static String different(RoundRecord before, RoundRecord now) {
        List<String> out = new ArrayList<>();
        for (HoleRecord hole : now.holes()) {
            if (before.holes().stream().noneMatch(hole::equals)) {
                out.add(Integer.toString(hole.number()));
            }
        }
        return out.isEmpty() ? "numbers that are gone" : String.join(", ", out);
    }

    /** Days on which a round of as many holes was kept before. */
    private static List<String> beside(List<Kept> before, List<KeptRound> kept) {
        return kept.stream()
                .filter(k -> before.stream()
                        .anyMatch(b -> b.entry().day().equals(k.day())
                                && b.entry().holes() == k.holes()
                                && b.entry().lesson() == k.lesson()))
                .map(k -> k.day().toString())
                .distinct()
                .toList();
    }
}
