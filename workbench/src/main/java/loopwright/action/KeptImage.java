package loopwright.action;

import java.time.Instant;

/**
 * What is known of an image that was laid under a course, without the image itself.
 *
 * @param number from 1, in the order in which images were taken in
 * @param shown whether it lies under the course now; at most one does
 * @param at when it was taken in
 * @param bytes size of its PNG
 */
public record KeptImage(int number, boolean shown, String name, Instant at, long bytes) {}
