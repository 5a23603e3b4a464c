/**
 * The commands. One class a command; {@link chargehand.cli.Commands} puts them together, words what was asked wrongly and keeps every
 * stack trace off the screen.
 */
@NullMarked
package chargehand.cli;

import org.jspecify.annotations.NullMarked;
