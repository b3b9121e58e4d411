package loopwright.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.player.Player;

/**
 * A week of practice: a split dealt out over sessions, so that every skill comes back on several days, and within a session one
 * skill follows another. Spacing helps simple tasks most and complex ones hardly (63 studies, Donovan and Radosevich 1999);
 * mixing skills is kept a little better in laboratories, hardly in the field and not by the young (54 studies, Czyz and others
 * 2024): both orders are sensible, neither is proven for golf.
 */
public record PracticeWeek(List<Session> sessions) {
    /** Balls in a block, each with its routine: assumed. */
    private static final int FULL_SWINGS = 14;

    private static final int SHORT_SHOTS = 20;
    private static final int PUTTS = 25;

    /** Blocks of one day, in order. */
    public record Session(List<Block> blocks) {
        public Session {
            blocks = List.copyOf(blocks);
        }

        public int minutes() {
            return blocks.stream().mapToInt(Block::minutes).sum();
        }
    }

    /**
     * Some time for one skill at one place.
     *
     * @param drill that measures the skill there within the time, if there is one
     * @param balls at most; 0 where no balls are hit
     */
    public record Block(Skill skill, Facility facility, int minutes, Optional<Drill> drill, int balls) {}

    public PracticeWeek {
        sessions = List.copyOf(sessions);
    }

    /** Deals a split out. */
    public static PracticeWeek of(TimeSplit split, int sessions, List<Drill> drills, Player player) {
        List<List<TimeSplit.Cell>> dealt = new ArrayList<>();
        for (int i = 0; i < sessions; i++) {
            dealt.add(new ArrayList<>());
        }
        int next = 0;
        for (Map.Entry<TimeSplit.Cell, Integer> e : inOrder(split)) {
            for (int b = 0; b < e.getValue(); b++) {
                dealt.get(next++ % sessions).add(e.getKey());
            }
        }
        return new PracticeWeek(dealt.stream()
                .filter(s -> !s.isEmpty())
                .map(s -> session(s, drills, player))
                .toList());
    }

    private static List<Map.Entry<TimeSplit.Cell, Integer>> inOrder(TimeSplit split) {
        return split.blocks().entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<TimeSplit.Cell, Integer> e) ->
                                e.getKey().facility())
                        .thenComparing(Map.Entry::getKey))
                .toList();
    }

    private static Session session(List<TimeSplit.Cell> cells, List<Drill> drills, Player player) {
        return new Session(cells.stream()
                .distinct()
                .map(c -> block(
                        c, (int) cells.stream().filter(c::equals).count() * PracticeHours.MINUTES, drills, player))
                .toList());
    }

    private static Block block(TimeSplit.Cell cell, int minutes, List<Drill> drills, Player player) {
        Optional<Drill> drill = drills.stream()
                .filter(d -> d.minutes() <= minutes
                        && d.facility() == cell.facility()
                        && d.skills(player).contains(cell.skill()))
                .min(Comparator.comparingInt(d -> d.skills(player).size()));
        return new Block(
                cell.skill(), cell.facility(), minutes, drill, minutes * balls(cell.skill()) / PracticeHours.MINUTES);
    }

    private static int balls(Skill skill) {
        if (skill == Skill.DECISIONS || skill == Skill.READING) {
            return 0;
        }
        return skill.isFullSwing() ? FULL_SWINGS : skill.isPutting() ? PUTTS : SHORT_SHOTS;
    }
}
