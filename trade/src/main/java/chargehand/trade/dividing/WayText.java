package chargehand.trade.dividing;

/** Ways of dividing in words, as they are done. */
final class WayText {
    private WayText() {}

    static String of(Way way) {
        return switch (way) {
            case Way.Plain plain -> move(plain);
            case Way.Compound compound ->
                move(compound.first()) + ", then plate and crank together "
                        + holes(Math.abs(compound.plateHoles())) + (compound.plateHoles() > 0 ? " on" : " back")
                        + " in the " + compound.plateCircle() + " circle";
            case Way.Differential differential ->
                move(differential.move()) + ", the plate geared to the spindle: " + gears(differential.gears());
        };
    }

    private static String move(Way.Plain move) {
        String turns = switch (move.turns()) {
            case 0 -> "";
            case 1 -> "1 turn";
            default -> move.turns() + " turns";
        };
        if (move.holes() == 0) {
            return turns;
        }
        return turns + (turns.isEmpty() ? "" : " and ") + holes(move.holes()) + " in the " + move.circle() + " circle";
    }

    private static String holes(int holes) {
        return holes == 1 ? "1 hole" : holes + " holes";
    }

    private static String gears(PlateGears gears) {
        String between = gears.stud()
                .map(stud -> " driving " + stud.second() + ", on the same stud " + stud.first() + " driving ")
                .orElse(" driving ");
        return gears.spindle() + " on the spindle" + between + gears.worm() + " on the worm's shaft, "
                + idlers(gears.idlers());
    }

    private static String idlers(int idlers) {
        return switch (idlers) {
            case 0 -> "no idler";
            case 1 -> "1 idler";
            default -> idlers + " idlers";
        };
    }
}
