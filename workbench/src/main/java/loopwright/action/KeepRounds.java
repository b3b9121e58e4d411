package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.scoring.CourseCard;
import loopwright.scoring.RoundRecord;

/** Rounds of the players of the store: kept, listed, read back and taken in from tables. */
public final class KeepRounds {
    private final BenchStore store;
    private final RoundFile files;

    public KeepRounds(BenchStore store, RoundFile files) {
        this.store = store;
        this.files = files;
    }

    /** A round with what the store says of it. */
    public record Kept(KeptRound entry, RoundRecord record) {}

    /** What became of a table: the rounds kept, and how many were there already. */
    public record TakenIn(List<KeptRound> kept, int known) {
        public TakenIn {
            kept = List.copyOf(kept);
        }
    }

    /** All rounds of a player in the order of their days. */
    public List<Kept> rounds(String player) {
        Map<String, String> texts = store.records().listRoundTexts(player);
        List<Kept> out = new ArrayList<>();
        for (KeptRound entry : store.records().listRounds(player)) {
            String text = texts.get(entry.id());
            if (text != null) { // erased between the two questions otherwise
                out.add(new Kept(entry, read(entry, text)));
            }
        }
        return out;
    }

    /** One round. */
    public Kept round(String player, String id) {
        String text = store.records().getRoundText(player, id);
        KeptRound entry = store.records().listRounds(player).stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new UserFault("There is no round " + id + " of this player any more."));
        return new Kept(entry, read(entry, text));
    }

    private RoundRecord read(KeptRound entry, String text) {
        RoundImport read = files.readText("round " + entry.id(), text);
        if (read.rounds().size() != 1 || !read.problems().isEmpty()) {
            throw new UserFault("The round " + entry.id() + " of " + entry.day()
                    + " cannot be read any more; erase it and take it in again.");
        }
        return read.rounds().get(0);
    }

    /** Keeps a round that was just written down; it needs its date. */
    public KeptRound add(String player, RoundRecord round) {
        return store.records()
                .addRounds(player, List.of(entry("", round)), List.of(text(round)))
                .get(0);
    }

    /** Puts a mended round in the place of one that is kept. */
    public void change(String player, String id, RoundRecord round) {
        store.records().changeRound(player, entry(id, round), text(round));
    }

    /**
     * Keeps the rounds of a table, all or none; those that are kept already, word for word, are left out.
     *
     * @param card fills in par and length where the rounds do not say
     * @param keepGoodRows the user's word that the good rows may be used although others are bad
     */
    public TakenIn takeIn(
            String player, String label, RoundImport read, Optional<CourseCard> card, boolean keepGoodRows) {
        List<RoundRecord> rounds = RoundReviews.usable(label, read, card, keepGoodRows);
        List<String> known = List.copyOf(store.records().listRoundTexts(player).values());
        List<KeptRound> entries = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (RoundRecord round : rounds) {
            String text = text(round);
            if (!known.contains(text) && !texts.contains(text)) {
                entries.add(entry("", round));
                texts.add(text);
            }
        }
        return new TakenIn(store.records().addRounds(player, entries, texts), rounds.size() - entries.size());
    }

    private String text(RoundRecord round) {
        return files.text(List.of(round));
    }

    private static KeptRound entry(String id, RoundRecord round) {
        LocalDate day = round.date()
                .map(LocalDate::parse)
                .orElseThrow(() -> new UserFault("Round " + round.name()
                        + " has no date, and rounds are kept by their dates; add a column date such as 2026-05-31."));
        return new KeptRound(
                id,
                day,
                round.course().orElse(""),
                round.tees().orElse(""),
                round.holes().size(),
                round.score(),
                round.tier().name(),
                round.lesson(),
                Instant.EPOCH);
    }
}
