/**
 * Every published row that bears on a sum, asked through the mouth of the {@code sums} command and held to its own
 * tolerance. The ledger {@code docs/coverage.md} is counted from here.
 */
@NullMarked
package chargehand.trade.published;

import org.jspecify.annotations.NullMarked;
