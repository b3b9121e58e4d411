package loopwright.practice;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.Club;
import loopwright.player.LieEffect;
import loopwright.player.Player;
import loopwright.player.StrikeModel;
import loopwright.player.Swing;
import loopwright.player.TouchShot;

/** What is hit at a station. */
public enum DrillShot {
    /** The driver, or the longest club, along a line. */
    DRIVER,
    /** The full swing whose length fits best, fitted to the distance. */
    FULL_SWING,
    /** The wedge swing, full or partial, whose length fits best, fitted to the distance. */
    WEDGE,
    CHIP,
    PITCH,
    BUNKER_SHOT;

    boolean isTouch() {
        return ordinal() >= CHIP.ordinal();
    }

    /** A player with this one shot, as it is played over a distance; its number is 0. */
    StrikeModel strikes(Player player, double metres) {
        if (isTouch()) {
            return new StrikeModel(player);
        }
        Swing swing = swing(player, metres);
        double fit = this == DRIVER ? 1 : metres / swing.pattern().totalMetres();
        Swing played = new Swing(swing.club(), swing.effort(), swing.pattern().longer(fit), swing.evidence());
        return new StrikeModel(new Player(
                player.name(),
                player.hand(),
                player.level(),
                List.of(played),
                player.touchShots(),
                player.putting(),
                player.lostBallsPerRound()));
    }

    /** The number of the shot among those of {@link #strikes}. */
    int number(StrikeModel strikes) {
        for (int shot = 0; shot < strikes.shots(); shot++) {
            if (isTouch() ? strikes.isTouch(shot) && strikes.touch(shot).kind() == kind() : !strikes.isTouch(shot)) {
                return shot;
            }
        }
        throw new IllegalStateException("every player has " + this);
    }

    LieEffect lie(StrikeModel strikes) {
        return strikes.lie(number(strikes), this == BUNKER_SHOT ? Surface.BUNKER : Surface.FAIRWAY, Situation.ORDINARY);
    }

    private TouchShot.Kind kind() {
        return switch (this) {
            case CHIP -> TouchShot.Kind.CHIP;
            case PITCH -> TouchShot.Kind.PITCH;
            default -> TouchShot.Kind.BUNKER_SHOT;
        };
    }

    private Swing swing(Player player, double metres) {
        if (this == DRIVER) {
            return Skill.driver(player);
        }
        Comparator<Swing> fits =
                Comparator.comparingDouble(s -> Math.abs(s.pattern().totalMetres() - metres));
        return player.swings().stream()
                .filter(s -> this == WEDGE ? s.club().family() == Club.Family.WEDGE : s.isFull())
                .min(fits)
                .or(() -> player.swings().stream().min(fits))
                .orElseThrow();
    }

    Set<Skill> skills(Player player, double metres) {
        EnumSet<Skill> out = EnumSet.noneOf(Skill.class);
        switch (this) {
            case CHIP -> out.add(Skill.CHIP);
            case PITCH -> out.add(Skill.PITCH);
            case BUNKER_SHOT -> out.add(Skill.BUNKER_SHOT);
            default ->
                Skill.ofExecution().stream()
                        .filter(s -> s != Skill.DRIVER_DISTANCE && s.isOf(player, swing(player, metres)))
                        .forEach(out::add);
        }
        return out;
    }
}
