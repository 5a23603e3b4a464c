package chargehand.web.method;

import chargehand.book.method.MethodRecord;
import chargehand.measure.WorkTimeText;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import chargehand.method.start.BeforeStart;
import chargehand.paper.sheet.HeldIn;
import chargehand.trade.sum.Step;
import java.util.List;
import java.util.Optional;

/**
 * A set-up as it is shown.
 *
 * @param held how the work is held, in a few words
 * @param crossReads what the cross dial counts, empty for anything but a lathe
 * @param picture the work in its holding as an SVG element; empty where there is none
 * @param checks what to look at before switching on
 */
public record SetUpFace(
        int number,
        String machine,
        String held,
        String crossReads,
        String time,
        String picture,
        List<String> instructions,
        List<String> checks,
        List<OperationFace> operations,
        List<Step> working) {

    /** The set-ups of a planning; none when no method was found. */
    static List<SetUpFace> all(Replays replays, MethodRecord planned) {
        Optional<Kit> kit = replays.kit(planned);
        List<String> stages = replays.of(planned).map(Replayed::stages).orElse(List.of());
        return planned.method()
                .map(method -> method.setUps().stream()
                        .map(setUp -> of(setUp, method, kit, picture(stages, setUp)))
                        .toList())
                .orElse(List.of());
    }

    private static String picture(List<String> stages, SetUp setUp) {
        return setUp.number() <= stages.size() ? stages.get(setUp.number() - 1) : "";
    }

    private static SetUpFace of(SetUp setUp, Method method, Optional<Kit> kit, String picture) {
        return new SetUpFace(
                setUp.number(),
                setUp.machine(),
                HeldIn.say(setUp.holding()),
                Kits.crossReads(kit, setUp.machine()),
                WorkTimeText.of(setUp.time(method.count())),
                picture,
                setUp.instructions(),
                kit.map(found -> BeforeStart.of(method, setUp, found)).orElse(List.of()),
                setUp.operations().stream().map(OperationFace::of).toList(),
                setUp.working());
    }
}
