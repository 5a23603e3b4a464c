package chargehand.method.replay;

import chargehand.measure.LengthUnit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Settings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Predicate;

/** Breaks one thing that a machine is set to. */
enum SettingMutator implements Breaking {
    /** Dials in the other unit. */
    DIAL_UNIT(set -> true, SettingMutator::otherUnit),

    /** The top slide a degree off. Harmless where only a chamfer is cut with it, whose angle has no limits. */
    ANGLE_OFF(set -> set.topSlide().isPresent(), SettingsEdits::steeper) {
        @Override
        boolean isHarmless(Sites.Site site) {
            return site.cut() instanceof Cut.FinishEdge;
        }
    },

    /** Another lever of the gearbox. */
    OTHER_GEAR(
            SettingMutator::isGeared,
            set -> SettingsEdits.with(set, gearing(set, "Z9", gear(set).error()))),

    /** No train at all. */
    NO_TRAIN(SettingMutator::isGeared, SettingsEdits::withoutGearing),

    /** An error of the lead kept from the sheet. */
    OTHER_ERROR(
            SettingMutator::isGeared,
            set -> SettingsEdits.with(
                    set, gearing(set, gear(set).gearbox(), gear(set).error() + 0.001))),

    /** The crank a whole turn further. */
    OTHER_TURNS(set -> set.indexing().isPresent(), set -> SettingsEdits.with(set, turned(set, 1, 0))),

    /** The pins on another circle. Harmless where no hole is counted on it. */
    OTHER_CIRCLE(set -> set.indexing().isPresent(), set -> SettingsEdits.with(set, turned(set, 0, 1))) {
        @Override
        boolean isHarmless(Sites.Site site) {
            return site.settings().indexing().filter(set -> set.holes() == 0).isPresent();
        }
    },

    /** No indexing given. */
    NO_INDEXING(set -> set.indexing().isPresent(), SettingsEdits::withoutIndexing),

    /** No speed for a cut that turns. */
    NO_SPEED(set -> set.speed().isPresent(), SettingsEdits::withoutSpeed) {
        @Override
        boolean isHarmless(Sites.Site site) {
            return site.cut() instanceof Cut.Deburr
                    || site.cut() instanceof Cut.TapHole
                    || (site.cut() instanceof Cut.ThreadInside thread && thread.way() == Cut.ThreadWay.TAP_BY_HAND);
        }
    },

    /** The last pass left out: the size is not reached. */
    LAST_PASS_OUT(
            set -> set.passes().size() > 1,
            set -> SettingsEdits.with(set, set.passes().subList(0, set.passes().size() - 1))),

    /** Two passes change places. */
    PASSES_SWAPPED(set -> set.passes().size() > 1, SettingMutator::swapped);

    @SuppressWarnings("ImmutableEnumChecker") // functions without state
    private final Predicate<Settings> fits;

    @SuppressWarnings("ImmutableEnumChecker") // functions without state
    private final Function<Settings, Settings> change;

    SettingMutator(Predicate<Settings> fits, Function<Settings, Settings> change) {
        this.fits = fits;
        this.change = change;
    }

    boolean isHarmless(Sites.Site site) {
        return false;
    }

    @Override
    public Optional<Mutant> broken(Good good, Random random) {
        Method method = good.method();
        return Sites.any(method, random, site -> fits.test(site.settings()))
                .map(site -> new Mutant(
                        Edits.in(method).settings(site.setUp(), site.number(), change::apply), isHarmless(site)));
    }

    private static boolean isGeared(Settings set) {
        return set.gearing().isPresent();
    }

    private static Settings.Gearing gear(Settings set) {
        return set.gearing().orElseThrow();
    }

    private static Settings.Gearing gearing(Settings set, String gearbox, double error) {
        Settings.Gearing was = gear(set);
        return new Settings.Gearing(was.drivers(), was.driven(), gearbox, error, was.dialMarks());
    }

    private static Settings.Indexing turned(Settings set, int turns, int circle) {
        Settings.Indexing was = set.indexing().orElseThrow();
        return new Settings.Indexing(was.divisions(), was.turns() + turns, was.holes(), was.circle() + circle);
    }

    private static Settings otherUnit(Settings set) {
        LengthUnit other = set.unit() == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        return new Settings(
                set.tool(),
                set.speed(),
                set.feed(),
                set.passes(),
                set.gearing(),
                set.indexing(),
                set.topSlide(),
                other,
                set.coolant());
    }

    private static Settings swapped(Settings set) {
        List<Settings.Pass> passes = set.passes();
        var swapped = new ArrayList<>(passes);
        Collections.swap(swapped, passes.size() - 2, passes.size() - 1);
        return SettingsEdits.with(set, swapped);
    }
}
