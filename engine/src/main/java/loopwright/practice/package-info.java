/**
 * Practice: what each skill is worth for the target, how skills grow with hours, how to split the hours, and drills that
 * measure.
 * Deliberately not here: solving holes, and anything about calendars.
 */
@NullMarked
package loopwright.practice;

import org.jspecify.annotations.NullMarked;
