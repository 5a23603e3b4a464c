/** Regular shapes milled on round bar: squares, hexagons and any number of flats. */
@NullMarked
package chargehand.trade.polygon;

import org.jspecify.annotations.NullMarked;
