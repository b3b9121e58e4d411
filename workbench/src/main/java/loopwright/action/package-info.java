/**
 * What a person can ask for, one class per use case, and the ports those need from outside.
 * Deliberately not here: HTTP, SQL, PDF, file formats and the terminal.
 */
@NullMarked
package loopwright.action;

import org.jspecify.annotations.NullMarked;
