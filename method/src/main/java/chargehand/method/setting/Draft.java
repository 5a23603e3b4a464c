package chargehand.method.setting;

import chargehand.measure.Angle;
import chargehand.measure.LengthUnit;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.WorkTime;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Reading;
import chargehand.method.plan.Settings;
import chargehand.trade.sum.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One operation while it is being written: what is known is put in as it is worked out. */
final class Draft {
    private final String say;
    private final Cut cut;
    private final String tool;
    private final LengthUnit unit;
    private final Working working = new Working();
    private final List<Settings.Pass> passes = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private Optional<SpindleSpeed> speed = Optional.empty();
    private Optional<Settings.Feed> feed = Optional.empty();
    private Optional<Settings.Gearing> gearing = Optional.empty();
    private Optional<Settings.Indexing> indexing = Optional.empty();
    private Optional<Angle> topSlide = Optional.empty();
    private String coolant = "";
    private boolean hold;
    private double minutes = OperationTimes.CHANGE_TOOL_MINUTES;

    Draft(String say, Cut cut, String tool, LengthUnit unit) {
        this.say = say;
        this.cut = cut;
        this.tool = tool;
        this.unit = unit;
    }

    Working working() {
        return working;
    }

    LengthUnit unit() {
        return unit;
    }

    Draft speed(SpindleSpeed rpm) {
        speed = Optional.of(rpm);
        return this;
    }

    Draft feed(Settings.Feed each) {
        feed = Optional.of(each);
        return this;
    }

    Draft passes(List<Settings.Pass> list) {
        passes.addAll(list);
        return this;
    }

    Draft gearing(Settings.Gearing train) {
        gearing = Optional.of(train);
        return this;
    }

    Draft indexing(Settings.Indexing by) {
        indexing = Optional.of(by);
        return this;
    }

    Draft topSlide(Angle angle) {
        topSlide = Optional.of(angle);
        return this;
    }

    double minutes() {
        return minutes;
    }

    Draft coolant(String words) {
        coolant = words;
        return this;
    }

    Draft reading(Reading reading) {
        readings.add(reading);
        minutes += OperationTimes.READING_MINUTES;
        return this;
    }

    Draft hold() {
        hold = true;
        return this;
    }

    Draft caution(String words) {
        working.caution(words);
        return this;
    }

    Draft takes(double moreMinutes) {
        minutes += moreMinutes;
        return this;
    }

    Operation write(int number) {
        var settings = new Settings(tool, speed, feed, passes, gearing, indexing, topSlide, unit, coolant);
        return new Operation(
                number,
                say,
                cut,
                settings,
                readings,
                hold,
                working.cautions(),
                WorkTime.minutes(minutes),
                working.steps());
    }
}
