/**
 * Published tables kept as plain text beside the code that reads them: comma-separated rows under named columns, with a
 * line at the head saying where the figures come from.
 */
@NullMarked
package chargehand.trade.table;

import org.jspecify.annotations.NullMarked;
