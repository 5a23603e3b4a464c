package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Figure;
import java.util.Optional;

/** The figures of a thread, in the order they are shown. */
final class ThreadAnswer {
    private final Answer answer = new Answer();

    ThreadAnswer(ScrewThread thread) {
        identity(thread);
        diameters(thread);
        edges(thread.profile());
        answer.with("helixAngle", Figure.of(thread.helixAngle()));
        if (thread.isTaper()) {
            answer.with("taper", Figure.of(PipeGauge.TAPER_ONE_IN));
        }
    }

    private void identity(ScrewThread thread) {
        answer.with("thread", Figure.of(thread.designation()))
                .with("series", Figure.of(thread.series().title()))
                .with("form", Figure.of(thread.form().title()))
                .with("angle", Figure.of(thread.form().includedAngle()))
                .with("pitch", Figure.of(thread.pitch().length()))
                .with("tpi", Figure.of(thread.pitch().tpi().doubleValue()))
                .with("starts", Figure.of((long) thread.starts()))
                .with("lead", Figure.of(thread.lead().length()))
                .with("leftHand", Figure.of(thread.leftHand()));
    }

    private void diameters(ScrewThread thread) {
        answer.with("major", Figure.of(thread.major()))
                .with("effective", Figure.of(thread.effective()))
                .with("minor", Figure.of(thread.minor()))
                .with("depth", Figure.of(thread.depth()))
                .with("core", Figure.of(thread.core()))
                .with("minorInternal", Figure.of(thread.minorInternal()))
                .with("majorInternal", Figure.of(thread.majorInternal()));
    }

    private void edges(ThreadProfile profile) {
        with("crestRadius", profile.crestRadius());
        with("rootRadius", profile.rootRadius());
        with("crestFlat", profile.crestFlat());
        with("rootFlat", profile.rootFlat());
    }

    void gauge(PipeGauge gauge, ScrewThread thread) {
        answer.with("gaugeLength", Figure.of(gauge.length()))
                .with("gaugeTolerance", Figure.of(gauge.tolerance()))
                .with("usefulLength", Figure.of(gauge.usefulLength()));
        if (thread.isTaper()) {
            answer.with("smallEnd", Figure.of(gauge.smallEnd(thread.major())));
        }
    }

    void limits(ThreadLimits limits) {
        var group = new Answer();
        limits.external().ifPresent(outside -> group.with("external", group(outside)));
        limits.internal().ifPresent(inside -> group.with("internal", group(inside)));
        answer.with("fit", Figure.of(limits.fit())).with("limits", group.asGroup());
    }

    private static Figure group(DiameterLimits limits) {
        return new Answer()
                .with("major", group(limits.major()))
                .with("effective", group(limits.effective()))
                .with("minor", group(limits.minor()))
                .asGroup();
    }

    private static Figure group(SizeLimits limits) {
        var group = new Answer();
        limits.most().ifPresent(most -> group.with("max", Figure.of(most)));
        limits.least().ifPresent(least -> group.with("min", Figure.of(least)));
        return group.asGroup();
    }

    void spanner(Spanner spanner) {
        answer.with("spanner", Figure.of(spanner.flats())).with("spannerName", Figure.of(spanner.called()));
        with("spannerOlder", spanner.older());
    }

    private void with(String name, Optional<Length> length) {
        length.ifPresent(value -> answer.with(name, Figure.of(value)));
    }

    Answer answer() {
        return answer;
    }
}
