package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;

/**
 * A drill as it was played.
 *
 * @param id empty until it is kept
 * @param drill its name
 * @param score in its points
 * @param minutes spent on it
 */
public record KeptDrill(String id, LocalDate day, String drill, int score, int minutes, String note, Instant at) {}
