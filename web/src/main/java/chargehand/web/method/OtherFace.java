package chargehand.web.method;

import chargehand.measure.WorkTime;
import chargehand.measure.WorkTimeText;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import chargehand.method.search.Other;
import chargehand.method.wish.HolderName;
import chargehand.method.wish.Wish;
import chargehand.paper.sheet.HeldIn;
import java.util.List;

/**
 * Another method as it is shown beside the best.
 *
 * @param time the time it takes for the whole count
 * @param beside how much more or less that is than the method in hand
 * @param stock the piece of stock
 * @param setUps each in a few words
 * @param asks what to ask for to come to it
 */
public record OtherFace(String time, String beside, String stock, List<String> setUps, List<String> asks) {
    static OtherFace of(Method best, Other other) {
        Method method = other.ready().method();
        double seconds = method.time().seconds() - best.time().seconds();
        String by = WorkTimeText.of(WorkTime.seconds(Math.abs(seconds)));
        return new OtherFace(
                WorkTimeText.of(method.time()),
                by + (seconds < 0 ? " less" : " more"),
                method.stock().piece() + ": " + method.stock().says(),
                method.setUps().stream().map(OtherFace::say).toList(),
                other.wishes().list().stream().map(Wish::says).toList());
    }

    private static String say(SetUp setUp) {
        return setUp.machine() + ", " + HeldIn.say(setUp.holding());
    }

    /** What holds the work in a set-up, and on which machine. */
    static String holder(SetUp setUp) {
        return HolderName.of(setUp.holding()) + " of " + setUp.machine();
    }
}
