package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.practice.Drill;
import loopwright.practice.Skill;

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

    /**
     * A block of a week that was ticked.
     *
     * @param recording of the week and block, so that a week sent twice counts once; empty where it was typed
     */
    public record Block(String recording, LocalDate day, Skill skill, int minutes) {}

    /** Keeps all playings, or none. */
    public Taken take(PlayerRecords records, String player, List<Playing> playings, Instant now) {
        return keep(records, player, playings.stream().map(p -> checked(p, now)).toList());
    }

    /** Keeps all blocks, or none. */
    public Taken takeBlocks(PlayerRecords records, String player, List<Block> blocks, Instant now) {
        return keep(records, player, blocks.stream().map(b -> checked(b, now)).toList());
    }

    private static Taken keep(PlayerRecords records, String player, List<KeptDrill> all) {
        Set<String> known = new HashSet<>();
        records.listDrills(player).forEach(d -> d.recording().ifPresent(known::add));
        List<KeptDrill> fresh = all.stream()
                .filter(d -> d.recording().map(known::add).orElse(true))
                .toList();
        fresh.forEach(d -> records.addDrill(player, d));
        return new Taken(fresh.size(), all.size() - fresh.size());
    }

    private KeptDrill checked(Block b, Instant now) {
        checkTime(b.day(), b.minutes());
        return KeptDrill.of(b, now);
    }

    private void checkTime(LocalDate day, int minutes) {
        if (minutes < 1 || minutes > MOST_MINUTES) {
            throw new UserFault(minutes + " minutes are no time to practise; give 1 to 600.");
        }
        if (day.isAfter(today)) {
            throw new UserFault(day + " has not come yet; practice is logged when it is over.");
        }
    }

    private KeptDrill checked(Playing p, Instant now) {
        Drill drill = DrillCards.get(drills, p.drill());
        if (p.score() < 0 || p.score() > drill.most()) {
            throw new UserFault("A score of " + p.score() + " cannot be: " + drill.name() + " gives 0 to "
                    + drill.most() + " points.");
        }
        checkTime(p.day(), p.minutes());
        if (p.note().length() > LONGEST_NOTE) {
            throw new UserFault("A note of a drill has at most " + LONGEST_NOTE + " letters; shorten it.");
        }
        return KeptDrill.of(p, drill.name(), now);
    }
}
