package chargehand.trade.wear;

import chargehand.measure.Angle;
import chargehand.measure.Length;

/**
 * One reading on worn work.
 *
 * @param station where along the work, as its reader calls the place
 * @param angle about the axis
 * @param diameter across the axis; of a radius that stands alone, twice it
 * @param least twice the distance from the axis to the nearest metal that the reading knows of
 */
record Reading(String station, Angle angle, Length diameter, Length least) {}
