/**
 * The printed book: pages set from the text of {@code action.Book}, drawn in the drawing language, and laid on sheets to be
 * cut and folded. Deliberately not here: what the book says.
 */
@NullMarked
package loopwright.adapter.book;

import org.jspecify.annotations.NullMarked;
