/**
 * The drawing language: pictures as lists of marks on paper, their two back ends (SVG, PNG), and the charts made of them.
 * Deliberately not here: computing anything that is drawn; a chart receives numbers and places and shows them.
 */
@NullMarked
package loopwright.adapter.chart;

import org.jspecify.annotations.NullMarked;
