package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.practice.Drill;

/**
 * Keeps drills as they were played: typed one by one, or written on a sheet that may be sent more than once. A playing from a
 * sheet names its recording and is kept once.
 */
public final class DrillLog {
    private static final int MOST_MINUTES = 600;
    private static final int LONGEST_NOTE = 300;

    private final List<Drill> drills;
    private final LocalDate today;

    /** {@code drills} are those there are. */
    public DrillLog(List<Drill> drills, LocalDate today) {
        this.drills = List.copyOf(drills);
        this.today = today;
    }

    /**
     * One playing.
     *
     * @param recording drawn by the sheet for this playing, small letters and figures; empty where it was typed
     */
    public record Playing(String recording, LocalDate day, String drill, int score, int minutes, String note) {}

    /**
     * What became of a sheet.
     *
     * @param known playings that were taken in before
     */
    public record Taken(int kept, int known) {}

    /** Keeps all playings, or none. */
    public Taken take(PlayerRecords records, String player, List<Playing> playings, Instant now) {
        Set<String> known = new HashSet<>();
        records.listDrills(player).forEach(d -> d.recording().ifPresent(known::add));
        List<KeptDrill> fresh = new ArrayList<>();
        for (Playing p : playings) {
            KeptDrill checked = checked(p, now);
            if (p.recording().isEmpty() || known.add(p.recording())) {
                fresh.add(checked);
            }
        }
        fresh.forEach(d -> records.addDrill(player, d));
        return new Taken(fresh.size(), playings.size() - fresh.size());
    }

    private KeptDrill checked(Playing p, Instant now) {
        Drill drill = DrillCards.get(drills, p.drill());
        if (p.score() < 0 || p.score() > drill.most()) {
            throw new UserFault("A score of " + p.score() + " cannot be: " + drill.name() + " gives 0 to "
                    + drill.most() + " points.");
        }
        if (p.minutes() < 1 || p.minutes() > MOST_MINUTES) {
            throw new UserFault(p.minutes() + " minutes are no time for a drill; give 1 to 600.");
        }
        if (p.day().isAfter(today)) {
            throw new UserFault(p.day() + " has not come yet; a drill is logged when it was played.");
        }
        if (p.note().length() > LONGEST_NOTE) {
            throw new UserFault("A note of a drill has at most " + LONGEST_NOTE + " letters; shorten it.");
        }
        return KeptDrill.of(p, drill.name(), now);
    }
}
