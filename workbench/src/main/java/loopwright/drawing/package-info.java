/**
 * The drawing language: pictures as lists of marks on paper, ground laid on them, and their back ends (SVG, PNG, PDF).
 * Deliberately not here: golf; whoever draws brings places, numbers and words.
 */
@NullMarked
package loopwright.drawing;

import org.jspecify.annotations.NullMarked;
