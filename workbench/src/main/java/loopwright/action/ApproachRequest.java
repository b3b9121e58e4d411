package loopwright.action;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What approaches are asked for.
 *
 * @param round course, player, tees, holes, hole locations, day and seed; its target does not matter
 * @param pinSheet hole locations of the day, beside those typed
 * @param fromMetres how far the approach is from the middle of the green; empty: where the plan leads
 */
public record ApproachRequest(PlanRequest round, Optional<Path> pinSheet, OptionalDouble fromMetres) {}
