package chargehand.trade.packer;

/**
 * One test of the valve.
 *
 * @param packer thickness (mm)
 * @param lifted the pressure at which it lifted, as the gauge read (bar)
 */
record Trial(double packer, double lifted) {}
