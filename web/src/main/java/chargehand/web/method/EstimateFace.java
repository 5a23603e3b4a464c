package chargehand.web.method;

import chargehand.measure.WorkTimeText;
import chargehand.method.estimate.Estimate;
import chargehand.trade.sum.Step;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a method comes to for a customer outside, as it is shown.
 *
 * @param hours from the least to the most
 * @param money likewise, empty where the kit gives no rates
 * @param rows the time of each set-up by kind of work
 * @param missing what is not in it
 */
public record EstimateFace(String hours, String money, List<Row> rows, List<String> missing, List<Step> working) {
    /** One set-up's time. */
    public record Row(int setUp, String setting, String handling, String cutting, String gauging, String all) {}

    static EstimateFace of(Estimate estimate) {
        Estimate.TimeRange time = estimate.time();
        return new EstimateFace(
                WorkTimeText.of(time.least()) + " to " + WorkTimeText.of(time.most()) + ", likely "
                        + WorkTimeText.of(time.likely()),
                money(estimate.cost()),
                estimate.shares().stream().map(EstimateFace::row).toList(),
                estimate.missing(),
                estimate.working());
    }

    private static String money(Optional<Estimate.Cost> cost) {
        return cost.map(each -> String.format(
                        Locale.ROOT,
                        "%.0f to %.0f %s, likely %.0f, %s",
                        each.all().least(),
                        each.all().most(),
                        each.money(),
                        each.all().likely(),
                        each.material()
                                .map(metal -> String.format(Locale.ROOT, "of which %.2f for material", metal.amount()))
                                .orElse("without material")))
                .orElse("");
    }

    private static Row row(Estimate.Share share) {
        return new Row(
                share.setUp(),
                WorkTimeText.of(share.setting()),
                WorkTimeText.of(share.handling()),
                WorkTimeText.of(share.cutting()),
                WorkTimeText.of(share.gauging()),
                WorkTimeText.of(share.time()));
    }
}
