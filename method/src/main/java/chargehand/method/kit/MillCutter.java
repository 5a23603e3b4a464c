package chargehand.method.kit;

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
     * A slitting saw.
     *
     * @param thickness the width of the slit it cuts
     */
    record SlittingSaw(String name, Length diameter, int teeth, Length thickness) implements MillCutter {}
}
