package chargehand.method.replay;

import static chargehand.method.replay.Steps.mm;

import chargehand.measure.Angle;
import chargehand.measure.SpindleSpeed;
import chargehand.method.plan.Settings;
import java.util.List;
import java.util.Optional;

/** Settings with one thing changed. */
final class SettingsEdits {
    private SettingsEdits() {}

    static Settings with(Settings set, List<Settings.Pass> passes) {
        return new Settings(
                set.tool(),
                set.speed(),
                set.feed(),
                passes,
                set.gearing(),
                set.indexing(),
                set.topSlide(),
                set.unit(),
                set.coolant());
    }

    static Settings with(Settings set, Settings.Gearing gearing) {
        return new Settings(
                set.tool(),
                set.speed(),
                set.feed(),
                set.passes(),
                Optional.of(gearing),
                set.indexing(),
                set.topSlide(),
                set.unit(),
                set.coolant());
    }

    static Settings with(Settings set, Settings.Indexing indexing) {
        return new Settings(
                set.tool(),
                set.speed(),
                set.feed(),
                set.passes(),
                set.gearing(),
                Optional.of(indexing),
                set.topSlide(),
                set.unit(),
                set.coolant());
    }

    static Settings tool(Settings set, String tool) {
        return new Settings(
                tool,
                set.speed(),
                set.feed(),
                set.passes(),
                set.gearing(),
                set.indexing(),
                set.topSlide(),
                set.unit(),
                "");
    }

    static Settings speed(Settings set, double rpm) {
        return new Settings(
                set.tool(),
                Optional.of(SpindleSpeed.rpm(rpm)),
                set.feed(),
                set.passes(),
                set.gearing(),
                set.indexing(),
                set.topSlide(),
                set.unit(),
                "");
    }

    static Settings feed(Settings set, double mm) {
        Settings.Feed feed = new Settings.Feed.PerTurn(mm(mm));
        return new Settings(
                set.tool(),
                set.speed(),
                Optional.of(feed),
                set.passes(),
                set.gearing(),
                set.indexing(),
                set.topSlide(),
                set.unit(),
                "");
    }

    static Settings steeper(Settings set) {
        return new Settings(
                set.tool(),
                set.speed(),
                set.feed(),
                set.passes(),
                set.gearing(),
                set.indexing(),
                set.topSlide().map(angle -> Angle.degrees(angle.degrees() + 1)),
                set.unit(),
                "");
    }
}
