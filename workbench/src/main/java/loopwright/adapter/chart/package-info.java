/**
 * The charts: one picture of one thing (a hole, a course, a pattern, a flight, a putt), made of the drawing language.
 * Deliberately not here: computing anything that is drawn; a chart receives numbers and places and shows them.
 */
@NullMarked
package loopwright.adapter.chart;

import org.jspecify.annotations.NullMarked;
