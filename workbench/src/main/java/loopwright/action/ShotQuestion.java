package loopwright.action;

import loopwright.flight.DayConditions;
import loopwright.flight.Launch;
import loopwright.ground.Surface;

/**
 * One ball to be flown.
 *
 * @param bearingRadians compass bearing of the aim, against which the wind is turned
 * @param landingMetres height of the landing place above the strike
 * @param surface what it lands and runs on, level
 */
public record ShotQuestion(
        Launch launch, DayConditions day, double bearingRadians, double landingMetres, Surface surface) {}
