package chargehand.trade.thread;

import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Optional;

/** Writes down how a thread's dimensions follow from its form, by the very proportions they are computed with. */
final class ThreadSteps {
    private static final int ANGLE_DECIMALS = 2;

    private final ScrewThread thread;
    private final LengthUnit unit;
    private final Working working;
    private final FormRules rules;
    private final ThreadProfile profile;
    private final Source form;

    ThreadSteps(ScrewThread thread, LengthUnit unit, Working working) {
        this.thread = thread;
        this.unit = unit;
        this.working = working;
        this.rules = FormRules.of(thread.form());
        this.profile = thread.profile();
        this.form = new Source(thread.form().source());
    }

    void form() {
        working.fact(
                thread.designation() + " is " + thread.series().title(),
                thread.form().title() + ", major diameter " + text(thread.major()),
                new Source(thread.series().standard()));
        pitch();
        if (profile.triangle().isPositive()) {
            working.step(
                    "Height of the sharp triangle the flanks make",
                    "H = p / (2 tan(angle / 2))",
                    figures(thread.pitch().length()) + " / (2 tan "
                            + AngleText.degrees(thread.form().includedAngle().half(), ANGLE_DECIMALS) + ")",
                    text(profile.triangle()),
                    Source.GEOMETRY);
        }
        if (profile.clearance().isPositive()) {
            working.fact("Clearance at the crests", "a = " + text(profile.clearance()), form);
        }
    }

    private void pitch() {
        String tpi = Designation.decimal(thread.pitch().tpi());
        Length pitch = thread.pitch().length();
        if (thread.isByThreadsToTheInch()) {
            String inch = unit == LengthUnit.INCH ? "1" : "25.4";
            working.step("Pitch", "p = 1 in / tpi", inch + " / " + tpi, text(pitch), Source.GEOMETRY);
        } else {
            String mm = LengthText.mmFigures(pitch, LengthText.MICROMETRE);
            working.step("Threads to the inch", "tpi = 25.4 mm / p", "25.4 / " + mm, tpi, Source.GEOMETRY);
        }
        if (thread.starts() > 1) {
            working.step(
                    "Lead: how far one turn carries it",
                    "lead = starts × p",
                    thread.starts() + " × " + figures(pitch),
                    text(thread.lead().length()),
                    Source.GEOMETRY);
        }
    }

    void diameters() {
        depth();
        diameter("Effective diameter", thread.effective(), rules.effective(), "−");
        diameter("Minor diameter of the outside thread", thread.minor(), rules.minor(), "−");
        diameter("Minor diameter of the inside thread", thread.minorInternal(), rules.minorInternal(), "−");
        if (profile.majorInternalRise().isPositive()) {
            diameter("Major diameter of the inside thread", thread.majorInternal(), rules.majorInternal(), "+");
        }
        core();
        working.step(
                "Helix angle at the effective diameter",
                "tan(helix) = lead / (π × effective)",
                figures(thread.lead().length()) + " / (π × " + figures(thread.effective()) + ")",
                AngleText.degrees(thread.helixAngle(), ANGLE_DECIMALS),
                Source.GEOMETRY);
    }

    private void core() {
        if (!thread.core().equals(thread.minor())) {
            working.step(
                    "What is left when the outside thread is cut to its depth",
                    "core = d − 2 h",
                    figures(thread.major()) + " − 2 × " + figures(thread.depth()),
                    text(thread.core()),
                    Source.GEOMETRY);
        }
    }

    private void depth() {
        String rounding = rules.depthRoundedToMm() > 0 ? ", to the nearest " + rules.depthRoundedToMm() + " mm" : "";
        working.step(
                "Depth of the outside thread" + rounding,
                "h = " + rules.depth().text(),
                rules.depth().with(letters()),
                text(thread.depth()),
                form);
    }

    private void diameter(String say, Length result, Proportion rule, String sign) {
        working.step(
                say,
                "d " + sign + " " + bracketed(rule.text()),
                figures(thread.major()) + " " + sign + " " + bracketed(rule.with(letters())),
                text(result),
                form);
    }

    /** Brackets about a sum or a difference; a single term stands without. */
    private static String bracketed(String rule) {
        return rule.contains(" + ") || rule.contains(" - ") ? "(" + rule + ")" : rule;
    }

    private Proportion.Letters letters() {
        return new Proportion.Letters(
                figures(profile.triangle()),
                figures(thread.pitch().length()),
                figures(profile.clearance()),
                figures(profile.depth()));
    }

    void limits(ThreadLimits limits) {
        limits.external().ifPresent(outside -> limits("outside", limits, outside));
        limits.internal().ifPresent(inside -> limits("inside", limits, inside));
    }

    private void limits(String which, ThreadLimits limits, DiameterLimits diameters) {
        working.fact(
                "Limits of the " + which + " thread, class " + limits.fit(),
                "major " + text(diameters.major()) + "; effective " + text(diameters.effective()) + "; minor "
                        + text(diameters.minor()),
                limits.source());
    }

    private String text(SizeLimits limits) {
        Optional<String> most = limits.most().map(this::text);
        Optional<String> least = limits.least().map(this::text);
        return most.map(upper -> least.map(lower -> lower + " to " + upper).orElse("at most " + upper))
                .orElseGet(() -> least.map(lower -> "at least " + lower).orElse("as the form gives"));
    }

    void noLimits() {
        working.caution(
                "No limits are held here for this thread: the diameters are basic sizes, without any clearance.");
    }

    void gauge(PipeGauge gauge) {
        working.fact(
                "Diameters are those at the gauge plane",
                text(gauge.length()) + " ± " + text(gauge.tolerance()) + " from the small end",
                new Source(thread.series().standard()));
        if (thread.isTaper()) {
            working.step(
                    "Major diameter at the small end",
                    "d − gauge length / 16",
                    figures(thread.major()) + " − " + figures(gauge.length()) + " / 16",
                    text(gauge.smallEnd(thread.major())),
                    Source.GEOMETRY);
        }
        working.caution("A joint that seals on its thread under pressure is for the site's competent person to pass.");
    }

    void spanner(Spanner spanner) {
        working.fact(
                "Hexagon of the usual bolt or nut, across flats", text(spanner.flats()), new Source(spanner.source()));
        spanner.older()
                .ifPresent(older -> working.fact(
                        "Hexagons on earlier work are another size", text(older), new Source("earlier practice")));
    }

    private String text(Length length) {
        return LengthText.both(length, unit);
    }

    private String figures(Length length) {
        return LengthText.figures(length, unit);
    }
}
