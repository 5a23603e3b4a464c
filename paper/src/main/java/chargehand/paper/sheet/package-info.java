/** The method sheet: A4 pages that hang above the machine, one set-up a page, to be ticked, read and signed. */
@NullMarked
package chargehand.paper.sheet;

import org.jspecify.annotations.NullMarked;
