package chargehand.method.wish;

import chargehand.method.plan.Holding;

/** What holds the work, by the name the kit gives it. */
public final class HolderName {
    /** What is said of work between centres. */
    public static final String CENTRES = "centres";

    /** What a lathe's faceplate is called. */
    public static final String FACEPLATE = "faceplate";

    /** What the vee blocks of a machine are called. */
    public static final String VEES = "vee blocks";

    /** What is said of work clamped down on a machine's table. */
    public static final String CLAMPS = "table clamps";

    private HolderName() {}

    /** The chuck, set of collets, mandrel, dividing head or vice; for work on its own centre holes, the centres. */
    public static String of(Holding holding) {
        return switch (holding) {
            case Holding.InChuck chuck -> chuck.chuck();
            case Holding.InCollet collet -> collet.collet();
            case Holding.BetweenCentres centres -> CENTRES;
            case Holding.OnMandrel mandrel -> mandrel.mandrel();
            case Holding.OnStub stub -> stub.mandrel();
            case Holding.OnFaceplate plate -> FACEPLATE;
            case Holding.InDividingHead head -> head.head();
            case Holding.LaidAcross laid -> laid.vice();
            case Holding.InVice vice -> vice.vice();
            case Holding.OnTable table -> CLAMPS;
            case Holding.Clamped clamped -> clamped.with();
        };
    }
}
