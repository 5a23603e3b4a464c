package chargehand.drawing.stage;

import chargehand.measure.Length;

/**
 * How large a holding is drawn: in proportion to the work, since a picture need not know every chuck.
 *
 * @param radius how far it reaches from the axis (mm of the real thing)
 * @param jaw how far its jaws reach
 */
record HoldSize(double radius, double jaw) {
    /** A chuck body stands out from what it grips by this at least (mm). */
    private static final double BODY = 16;

    private static final double BODY_OF_RADIUS = 1.5;
    private static final double JAW = 0.55;
    private static final double COLLET = 8;
    private static final double SLIM = 1.35;

    static HoldSize of(Hold hold) {
        double work = hold.grip().diameter().half().mm();
        return switch (hold) {
            case Hold.Chuck chuck -> chuck(work);
            case Hold.DividingHead head -> chuck(work);
            case Hold.JawsInside jaws -> chuck(work);
            case Hold.Faceplate plate -> chuck(plate.outside().half().mm());
            case Hold.StubMandrel stub -> chuck(work);
            case Hold.Collet collet -> new HoldSize(Math.max(work + COLLET, SLIM * work), work + COLLET / 2);
            case Hold.Centres centres -> new HoldSize(Math.max(work + COLLET, SLIM * work), work + COLLET);
            case Hold.Mandrel mandrel -> new HoldSize(work + COLLET, work);
            case Hold.Vee vee -> new HoldSize(work + BODY, work + COLLET);
            case Hold.Clamped clamped -> new HoldSize(work + BODY, work + BODY);
        };
    }

    private static HoldSize chuck(double work) {
        double body = Math.max(work + BODY, BODY_OF_RADIUS * work);
        return new HoldSize(body, work + JAW * (body - work));
    }

    Length reach() {
        return Length.mm(radius);
    }
}
