/**
 * How each operation is set: tool, speed and feed from the machine's own lists, passes with dial readings, gauges, time, and
 * the working behind each figure.
 */
@NullMarked
package chargehand.method.setting;

import org.jspecify.annotations.NullMarked;
