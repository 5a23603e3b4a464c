package chargehand.trade.dividing;

import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Figure;

/** A way of dividing as figures of an answer. */
final class WayFigure {
    private WayFigure() {}

    static Figure of(Indexed indexed) {
        Answer answer = switch (indexed.way()) {
            case Way.Plain plain -> move("plain", plain);
            case Way.Compound compound ->
                move("compound", compound.first())
                        .with("plateHoles", Figure.of((long) compound.plateHoles()))
                        .with("plateCircle", Figure.of((long) compound.plateCircle()));
            case Way.Differential differential ->
                move("differential", differential.move())
                        .with("gears", gears(differential.gears()))
                        .with("idlers", Figure.of((long) differential.gears().idlers()))
                        .with("plate", Figure.of(direction(differential.gears())))
                        .with(
                                "plateRatio",
                                Figure.of(differential.gears().ratio().doubleValue()));
        };
        return answer.with("error", Figure.of(indexed.errorAtWork()))
                .with("exact", Figure.of(indexed.exact()))
                .with("say", Figure.of(WayText.of(indexed.way())))
                .asGroup();
    }

    private static Answer move(String kind, Way.Plain move) {
        return new Answer()
                .with("kind", Figure.of(kind))
                .with("turns", Figure.of((long) move.turns()))
                .with("circle", Figure.of((long) move.circle()))
                .with("holes", Figure.of((long) move.holes()));
    }

    private static Figure gears(PlateGears gears) {
        var answer = new Answer().with("spindle", Figure.of((long) gears.spindle()));
        gears.stud()
                .ifPresent(stud -> answer.with("secondOnStud", Figure.of((long) stud.second()))
                        .with("firstOnStud", Figure.of((long) stud.first())));
        return answer.with("worm", Figure.of((long) gears.worm())).asGroup();
    }

    static String direction(PlateGears gears) {
        return gears.withCrank() ? "with the crank" : "against the crank";
    }
}
