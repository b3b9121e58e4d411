package loopwright.action;

import java.util.Optional;
import loopwright.putting.GreenSpeed;
import loopwright.putting.PlaneGreen;
import loopwright.putting.PuttingSkill;

/**
 * One putt to think about. The ball lies south of the hole and is putted north, so that right is east.
 *
 * @param metres from the ball to the hole
 * @param slope of the green along the putt; empty where nobody measured it
 * @param skillFrom where the skill comes from, for a person: "a 90-golfer (assumed from the level)"
 */
public record PuttQuestion(
        double metres, GreenSpeed speed, Optional<PlaneGreen> slope, PuttingSkill skill, String skillFrom) {}
