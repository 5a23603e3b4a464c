package chargehand.method.kit;

import chargehand.measure.Angle;
import chargehand.measure.Length;

/** A cutter for the mill. */
public sealed interface MillCutter {
    /** What the shop calls it. */
    String name();

    Length diameter();

    int teeth();

    /**
     * An end mill: cuts on its side and end, not straight down.
     *
     * @param reach the depth its teeth cover
     */
    record EndMill(String name, Length diameter, int teeth, Length reach) implements MillCutter {}

    /**
     * A slot drill: cuts straight down, and slots and keyways of its own width.
     *
     * @param reach the depth its teeth cover
     */
    record SlotDrill(String name, Length diameter, int teeth, Length reach) implements MillCutter {}

    /** A face mill for flat faces. */
    record FaceMill(String name, Length diameter, int teeth) implements MillCutter {}

    /**
     * A form cutter for the spaces between the teeth of wheels.
     *
     * @param module of the teeth it cuts, in millimetres
     * @param number in the set of eight: 8 for twelve and thirteen teeth to 1 for a rack
     */
    record GearCutter(String name, Length diameter, int teeth, double module, Angle pressureAngle, int number)
            implements MillCutter {}

    /**
     * A slitting saw.
     *
     * @param thickness the width of the slit it cuts
     */
    record SlittingSaw(String name, Length diameter, int teeth, Length thickness) implements MillCutter {}
}
