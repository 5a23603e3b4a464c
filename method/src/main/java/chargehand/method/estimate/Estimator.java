package chargehand.method.estimate;

import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.WorkTime;
import chargehand.measure.WorkTimeText;
import chargehand.method.estimate.Estimate.Amount;
import chargehand.method.estimate.Estimate.Cost;
import chargehand.method.estimate.Estimate.MoneyRange;
import chargehand.method.estimate.Estimate.Share;
import chargehand.method.estimate.Estimate.TimeRange;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Rates;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Rack;
import chargehand.method.setting.OperationTimes;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reckons what a method comes to, from its own times, the kit's rates and the rack's prices. */
public final class Estimator {
    private static final double SECONDS_IN_HOUR = 3600;
    private static final Source METHOD = new Source("the method's own times");

    private final Method method;
    private final Kit kit;
    private final Rack rack;
    private final Working working = new Working();
    private final List<String> missing = new ArrayList<>();

    private Estimator(Method method, Kit kit, Rack rack) {
        this.method = method;
        this.kit = kit;
        this.rack = rack;
    }

    /** The estimate for the method's whole count. */
    public static Estimate of(Method method, Kit kit, Rack rack) {
        return new Estimator(method, kit, rack).estimate();
    }

    private Estimate estimate() {
        List<Share> shares = method.setUps().stream().map(this::share).toList();
        TimeRange time = time(shares);
        sayTimes(shares, time);
        Optional<Cost> cost = kit.rates().map(rates -> cost(rates, shares));
        if (cost.isEmpty()) {
            missing.add("No file of the kit gives rates, so there are hours and no money: write one with rates: at its"
                    + " head.");
        }
        missing.add("Carriage, tax and whatever is done outside the shop are not in it.");
        return new Estimate(shares, time, cost, missing.stream().distinct().toList(), working.steps());
    }

    private Share share(SetUp setUp) {
        WorkTime gauging = WorkTime.ZERO;
        WorkTime handling = setUp.loading();
        WorkTime cutting = WorkTime.ZERO;
        for (Operation operation : setUp.operations()) {
            WorkTime readings = WorkTime.minutes(operation.readings().size() * OperationTimes.READING_MINUTES);
            WorkTime byHand = operation.cut() instanceof Cut.Deburr
                    ? less(operation.time(), readings)
                    : WorkTime.minutes(OperationTimes.CHANGE_TOOL_MINUTES);
            gauging = gauging.plus(readings);
            handling = handling.plus(byHand);
            cutting = cutting.plus(less(less(operation.time(), readings), byHand));
        }
        int count = method.count();
        return new Share(
                setUp.number(),
                setUp.machine(),
                setUp.setting(),
                handling.times(count),
                cutting.times(count),
                gauging.times(count));
    }

    private static WorkTime less(WorkTime all, WorkTime part) {
        return all.plus(part.times(-1));
    }

    private static TimeRange time(List<Share> shares) {
        return shares.stream()
                .map(Spread::range)
                .reduce(new TimeRange(WorkTime.ZERO, WorkTime.ZERO, WorkTime.ZERO), TimeRange::plus);
    }

    private void sayTimes(List<Share> shares, TimeRange time) {
        for (Spread kind : Spread.values()) {
            working.step(
                    "Time for " + kind.words() + ", and how far it may be out",
                    "",
                    String.format(
                            Locale.ROOT,
                            "× %.2f to × %.2f, ours until the shop's own times are learnt",
                            kind.least(),
                            kind.most()),
                    WorkTimeText.of(kind.of(shares)),
                    Source.COMMON_PRACTICE);
        }
        working.fact(
                "In all for " + method.count() + " off",
                WorkTimeText.of(time.least()) + " to " + WorkTimeText.of(time.most()) + ", likely "
                        + WorkTimeText.of(time.likely()),
                METHOD);
    }

    private Cost cost(Rates rates, List<Share> shares) {
        var source = new Source("the shop's rates: " + rates.source());
        MoneyRange work = shares.stream()
                .map(share -> work(rates, share, source))
                .reduce(new MoneyRange(0, 0, 0), MoneyRange::plus);
        Optional<Amount> material = material(rates, source);
        double metal = material.map(Amount::amount).orElse(0.0);
        return new Cost(rates.money(), work, material, work.plus(new MoneyRange(metal, metal, metal)));
    }

    private MoneyRange work(Rates rates, Share share, Source source) {
        double hour = hour(rates, share.machine());
        TimeRange time = Spread.range(share);
        double likely = hours(time.likely()) * hour;
        working.step(
                "Set-up " + share.setUp() + " on the " + share.machine(),
                "hours × (person + machine)",
                String.format(Locale.ROOT, "%.2f × %.2f", hours(time.likely()), hour),
                money(rates, likely),
                source);
        return new MoneyRange(hours(time.least()) * hour, likely, hours(time.most()) * hour);
    }

    private double hour(Rates rates, String machine) {
        Optional<Double> onTop = rates.onTop(machine);
        if (onTop.isEmpty()) {
            missing.add("The rates name no hour for the " + machine + ": only the person's is counted there.");
        }
        return rates.hour() + onTop.orElse(0.0);
    }

    private Optional<Amount> material(Rates rates, Source source) {
        if (method.stock().blank() instanceof Blank.OldPart) {
            return Optional.of(new Amount(0));
        }
        String name = method.stock().piece();
        var metal = new Metal(method, kit);
        Optional<Piece> piece = rack.find(name);
        Optional<Double> price = piece.flatMap(Piece::price);
        Optional<Double> weight = piece.flatMap(metal::kilograms);
        if (price.isEmpty() || weight.isEmpty()) {
            missing.add("The price or the weight of " + name + " is not known: material is not in the money.");
            return Optional.empty();
        }
        double cost = weight.get() * price.get() * (1 + rates.material());
        working.step(
                "Material from " + name + ", " + LengthText.in(metal.perPiece(), LengthUnit.MILLIMETRE)
                        + " of it for each piece",
                "kg × price × (1 + added)",
                String.format(Locale.ROOT, "%.3f × %.2f × %.2f", weight.get(), price.get(), 1 + rates.material()),
                money(rates, cost),
                source);
        return Optional.of(new Amount(cost));
    }

    private static double hours(WorkTime time) {
        return time.seconds() / SECONDS_IN_HOUR;
    }

    private static String money(Rates rates, double amount) {
        return String.format(Locale.ROOT, "%.2f %s", amount, rates.money());
    }
}
