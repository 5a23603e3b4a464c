package chargehand.trade.cutting;

import chargehand.measure.Power;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Figure;

/** The settings of a cut as figures of an answer. */
final class CutFigures {
    private CutFigures() {}

    static Answer of(CutSettings settings, CutSettings.Limit limit) {
        var spindle = settings.spindle();
        var answer = new Answer()
                .with("speed", Figure.of(spindle.wanted()))
                .with("rpm", Figure.rpm(spindle.ideal().rpm()))
                .with(
                        "chosen",
                        new Answer()
                                .with("rpm", Figure.rpm(spindle.rpm().rpm()))
                                .with("speed", Figure.of(spindle.speed()))
                                .with("feed", Figure.of(settings.feed()))
                                .asGroup())
                .with("feed", Figure.of(settings.feed()))
                .with("feedRate", Figure.of(settings.feedRate()))
                .with("passes", Figure.of((long) settings.depths().size()))
                .with(
                        "depths",
                        Figure.many(settings.depths().stream().map(Figure::of).toList()));
        settings.load().ifPresent(load -> addLoad(answer, load));
        settings.time().ifPresent(time -> answer.with("time", Figure.of(time)));
        settings.roughness().ifPresent(mean -> answer.with("roughness", Figure.of(mean)));
        return answer.with("limit", Figure.of(limit.say()));
    }

    private static void addLoad(Answer answer, CutSettings.Load load) {
        answer.with("force", Figure.of(load.force()))
                .with("torque", Figure.of(load.torque()))
                .with("power", Figure.of(load.power()))
                .with("motor", Figure.of(Power.watts(load.power().watts() / Drive.EFFICIENCY)));
    }
}
