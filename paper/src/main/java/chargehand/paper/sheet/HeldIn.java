package chargehand.paper.sheet;

import chargehand.method.plan.Holding;

/** A holding in a few words, for headings. */
public final class HeldIn {
    private HeldIn() {}

    public static String say(Holding holding) {
        return switch (holding) {
            case Holding.InChuck chuck -> chuck.chuck() + bearing(chuck.bearing()) + support(chuck.support());
            case Holding.InCollet collet -> collet.collet() + support(collet.support());
            case Holding.BetweenCentres centres -> "between centres";
            case Holding.OnMandrel mandrel -> "on " + mandrel.mandrel();
            case Holding.OnStub stub -> "on a stub mandrel";
            case Holding.OnFaceplate plate -> "on the faceplate";
            case Holding.InDividingHead head -> head.head() + support(head.support());
            case Holding.LaidAcross laid -> "in " + laid.vice();
            case Holding.InVice vice -> vice.vice();
            case Holding.OnTable table -> "clamped on the table";
            case Holding.Clamped clamped -> clamped.with();
        };
    }

    private static String bearing(Holding.Bearing bearing) {
        return switch (bearing) {
            case Holding.Bearing.Closing closing -> "";
            case Holding.Bearing.Opening opening -> ", opening in the bore";
            case Holding.Bearing.SoftJaws soft -> ", soft jaws";
            case Holding.Bearing.SplitBush bush -> ", in a split bush";
        };
    }

    private static String support(Holding.Support support) {
        return switch (support) {
            case Holding.Support.None none -> "";
            case Holding.Support.Centre centre -> " and centre";
            case Holding.Support.FixedSteady steady -> " and fixed steady";
            case Holding.Support.TravellingSteady steady -> ", centre and travelling steady";
        };
    }
}
