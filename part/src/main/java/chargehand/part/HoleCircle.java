package chargehand.part;

import chargehand.measure.Angle;

/**
 * Where alike holes stand evenly round the axis.
 *
 * @param count how many, at least one
 * @param diameter of the circle through their centres
 * @param around the angle of the first round the axis, 0° up
 */
public record HoleCircle(int count, Size diameter, Angle around) {}
