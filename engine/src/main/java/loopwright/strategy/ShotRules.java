package loopwright.strategy;

import java.util.Set;

/**
 * What the coach has locked on one hole, by numbers of {@code StrikeModel}.
 *
 * @param forbidden shots that are not played at all on this hole
 * @param fromTee if not empty, the tee shot is one of these
 */
public record ShotRules(Set<Integer> forbidden, Set<Integer> fromTee) {
    public static final ShotRules FREE = new ShotRules(Set.of(), Set.of());

    public ShotRules {
        forbidden = Set.copyOf(forbidden);
        fromTee = Set.copyOf(fromTee);
    }

    boolean allows(int shot, boolean onTee) {
        return !forbidden.contains(shot) && (!onTee || fromTee.isEmpty() || fromTee.contains(shot));
    }
}
