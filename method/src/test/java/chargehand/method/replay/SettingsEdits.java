package chargehand.method.replay;

import static chargehand.method.replay.Steps.mm;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.SpindleSpeed;
import chargehand.method.plan.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

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

    private static boolean isOpening(Settings set) {
        List<Settings.Pass> passes = set.passes();
        return passes.size() > 1
                && passes.getLast().leaves().isMoreThan(passes.getFirst().leaves());
    }

    /** One pass, any but the last, goes a third of a millimetre beyond the size. */
    static Settings tooDeep(Settings set, Random random) {
        var passes = new ArrayList<>(set.passes());
        int which = random.nextInt(passes.size());
        Settings.Pass pass = passes.get(which);
        Length beyond = mm(isOpening(set) ? 0.3 : -0.3);
        Length leaves = passes.getLast().leaves().plus(beyond);
        Length more = pass.leaves().minus(leaves).abs();
        passes.set(which, new Settings.Pass(pass.number(), pass.dial().plus(more), leaves));
        return with(set, passes);
    }

    /** One dial reading is a quarter of a millimetre off. */
    static Settings misread(Settings set, Random random) {
        var passes = new ArrayList<>(set.passes());
        int which = random.nextInt(passes.size());
        Settings.Pass pass = passes.get(which);
        passes.set(which, new Settings.Pass(pass.number(), pass.dial().plus(mm(0.25)), pass.leaves()));
        return with(set, passes);
    }

    /** One driver is another wheel than it was. */
    static Settings otherWheel(Settings set, Random random) {
        Settings.Gearing gearing = set.gearing().orElseThrow();
        var drivers = new ArrayList<>(gearing.drivers());
        int which = random.nextInt(drivers.size());
        drivers.set(which, drivers.get(which) == 50 ? 40 : 50);
        return with(
                set,
                new Settings.Gearing(
                        drivers, gearing.driven(), gearing.gearbox(), gearing.error(), gearing.dialMarks()));
    }

    static Settings oneHoleMore(Settings set) {
        Settings.Indexing indexing = set.indexing().orElseThrow();
        return with(
                set,
                new Settings.Indexing(
                        indexing.divisions(),
                        indexing.turns(),
                        indexing.holes() + 1,
                        indexing.circle(),
                        indexing.geared()));
    }

    static Settings withoutGearing(Settings set) {
        return new Settings(
                set.tool(),
                set.speed(),
                set.feed(),
                set.passes(),
                Optional.empty(),
                set.indexing(),
                set.topSlide(),
                set.unit(),
                set.coolant());
    }

    static Settings withoutIndexing(Settings set) {
        return new Settings(
                set.tool(),
                set.speed(),
                set.feed(),
                set.passes(),
                set.gearing(),
                Optional.empty(),
                set.topSlide(),
                set.unit(),
                set.coolant());
    }

    static Settings withoutSpeed(Settings set) {
        return new Settings(
                set.tool(),
                Optional.empty(),
                set.feed(),
                set.passes(),
                set.gearing(),
                set.indexing(),
                set.topSlide(),
                set.unit(),
                set.coolant());
    }
}
