package chargehand.trade.gauging;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Pitch;
import chargehand.measure.Ratio;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which thread something is, from what can be measured on it. */
@AutoService(Sum.class)
public final class NameThreadSum implements Sum {
    private static final double COARSEST_TPI = 1;
    private static final double FINEST_TPI = 150;
    private static final Length MOST_SLACK = Length.mm(2);
    private static final Length MOST_WORN = Length.mm(3);
    private static final int MOST_WORKED = 3;
    private static final double SURE = 0.95;
    private static final double LIKELY = 0.7;
    private static final Source RULE =
            new Source("Bayes' rule over the listed threads; weights of the series from common practice");

    private static final Field<Length> DIAMETER = Field.required(
            "diameter", "Diameter", Kinds.SIZE, "16.4 mm or .645 in, over the crests, or across the bore of a nut");
    private static final Field<Ratio> TPI = Field.optional(
            "tpi",
            "Threads to the inch",
            Kinds.where(
                    Kinds.NUMBER,
                    tpi -> tpi.value() >= COARSEST_TPI && tpi.value() <= FINEST_TPI,
                    "is not between 1 and 150 threads to the inch"),
            "19, as counted or by pitch gauge; or give the pitch instead");
    private static final Field<Pitch> PITCH = Field.optional(
            "pitch", "Pitch", Kinds.PITCH, "1.5 mm, by pitch gauge; or give threads to the inch instead");
    private static final Field<Angle> ANGLE = Field.optional(
            "angle",
            "Angle between the flanks",
            Kinds.where(
                    Kinds.ANGLE,
                    angle -> angle.degrees() >= 0 && angle.degrees() < 90,
                    "is not an angle of flanks from 0 to 90°"),
            "55 or 60, by form gauge; left out if none was tried");
    private static final Field<Boolean> TAPER =
            Field.optional("taper", "Tapers", Kinds.YES_NO, "yes or no; left out if not looked for");
    private static final Field<Boolean> INSIDE =
            Field.optional("inside", "Nut or hole", Kinds.YES_NO, "no", "yes for a nut or a tapped hole");
    private static final Field<Length> SLACK = Field.optional(
            "slack",
            "Diameter may be misread by",
            Kinds.where(
                    Kinds.LENGTH,
                    slack -> !slack.isNegative() && !slack.isMoreThan(MOST_SLACK),
                    "is not between nothing and 2 mm"),
            "0.05 mm",
            "0.05 mm for calipers, .001 in for a micrometer");
    private static final Field<Length> WORN = Field.optional(
            "worn",
            "Crests may be worn by",
            Kinds.where(
                    Kinds.LENGTH,
                    worn -> !worn.isNegative() && !worn.isMoreThan(MOST_WORN),
                    "is not between nothing and 3 mm"),
            "0.1 mm",
            "0.3 mm for a badly worn one, 0 for a new one");

    @Override
    public String name() {
        return "name-thread";
    }

    @Override
    public String title() {
        return "Name a thread";
    }

    @Override
    public String purpose() {
        return "Names the threads that something measured may be, how likely each is, and what would tell them apart.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(DIAMETER, TPI, PITCH, ANGLE, TAPER, INSIDE, SLACK, WORN);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("candidates", "It may be").shownFine(),
                Result.always("sure", "How sure"),
                Result.sometimes("tellApart", "To tell the first two apart"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a pipe union", Map.of("diameter", "16.4 mm", "tpi", "19")),
                new Example("a worn stud", Map.of("diameter", ".49 in", "tpi", "12", "worn", "0.3 mm")),
                new Example("a nut", Map.of("diameter", "10.3 mm", "pitch", "1.75 mm", "inside", "yes")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        ThreadReading reading = reading(asked);
        ThreadNaming.Weighing weighing = ThreadNaming.weigh(reading);
        List<ThreadCandidate> candidates = weighing.candidates();
        if (candidates.isEmpty()) {
            throw Refusal.of(
                    DIAMETER,
                    "no listed thread comes near these readings: check them, or allow more wear or a larger misreading.");
        }
        write(reading, weighing, asked.unit(), working);
        var answer = new Answer()
                .with(
                        "candidates",
                        Figure.many(
                                candidates.stream().map(NameThreadSum::group).toList()))
                .with("sure", Figure.of(sure(candidates)));
        tellApart(candidates, reading, asked.unit()).ifPresent(say -> answer.with("tellApart", Figure.of(say)));
        return answer;
    }

    private static ThreadReading reading(Asked asked) {
        if (asked.has(TPI) == asked.has(PITCH)) {
            throw Refusal.of(TPI, "give either threads to the inch or a pitch, one of the two.");
        }
        Pitch pitch = asked.find(TPI).map(tpi -> Pitch.ofTpi(tpi.exact())).orElseGet(() -> asked.get(PITCH));
        double tpi = pitch.tpi().doubleValue();
        if (tpi < COARSEST_TPI || tpi > FINEST_TPI) {
            throw Refusal.of(
                    PITCH, "no thread listed here is so coarse or so fine: a pitch lies between 0.17 and 25.4 mm.");
        }
        return new ThreadReading(
                asked.get(DIAMETER),
                pitch,
                asked.find(ANGLE),
                asked.find(TAPER),
                asked.get(INSIDE),
                new ThreadReading.Trust(asked.get(SLACK), asked.get(WORN)));
    }

    private static void write(ThreadReading reading, ThreadNaming.Weighing weighing, LengthUnit unit, Working working) {
        working.fact(
                reading.inside() ? "Bore and pitch as measured" : "Diameter over the crests and pitch as measured",
                LengthText.both(reading.diameter(), unit) + ", " + Notations.PITCH.text(reading.pitch(), unit),
                new Source("the asker"));
        for (ThreadCandidate candidate :
                weighing.candidates().stream().limit(MOST_WORKED).toList()) {
            working.step(
                    candidate.thread() + " (" + candidate.thread().series().title() + "): diameter off "
                            + LengthText.signed(candidate.diameterOff(), unit) + ", pitch off "
                            + LengthText.signed(candidate.pitchOff(), unit),
                    "weight of the series × diameter × pitch × angle × taper / the sum over all threads",
                    candidate.likelihood() + String.format(Locale.ROOT, " / %.3g", weighing.total()),
                    percent(candidate.probability()),
                    RULE);
        }
        working.caution("A guess until the mating part or a gauge confirms it.");
    }

    private static Figure group(ThreadCandidate candidate) {
        return new Answer()
                .with("thread", Figure.of(candidate.thread().designation()))
                .with("probability", Figure.of(candidate.probability()))
                .with("diameterOff", Figure.of(candidate.diameterOff()))
                .with("pitchOff", Figure.of(candidate.pitchOff()))
                .asGroup();
    }

    private static String sure(List<ThreadCandidate> candidates) {
        ThreadCandidate first = candidates.getFirst();
        String probability = percent(first.probability());
        if (first.probability() >= SURE) {
            return "As good as certain: " + first.thread() + ", " + probability + ".";
        }
        String next = candidates.size() > 1 ? "; next " + candidates.get(1).thread() : "";
        String how = first.probability() >= LIKELY ? "Likely " : "Not sure: ";
        return how + first.thread() + ", " + probability + next + ".";
    }

    private static Optional<String> tellApart(
            List<ThreadCandidate> candidates, ThreadReading reading, LengthUnit unit) {
        if (candidates.size() < 2) {
            return Optional.empty();
        }
        ThreadCandidate first = candidates.get(0);
        ThreadCandidate second = candidates.get(1);
        return Optional.of(TellingApart.find(first.thread(), second.thread(), reading.inside(), unit)
                .map(TellingApart::say)
                .orElse("Nothing measured in the shop tells " + first.thread() + " from " + second.thread()
                        + ": they will most likely screw together."));
    }

    private static String percent(double probability) {
        return String.format(Locale.ROOT, "%.0f %%", probability * 100);
    }
}
