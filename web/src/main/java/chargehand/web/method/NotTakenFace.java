package chargehand.web.method;

import chargehand.method.plan.NotTaken;
import java.util.ArrayList;
import java.util.List;

/**
 * Why one set-up is not held otherwise.
 *
 * @param setUp its number
 * @param ways each way not taken
 */
public record NotTakenFace(int setUp, List<Not> ways) {
    /** A machine and what holds work on it, and why it is not taken. */
    public record Not(String what, String why) {}

    static List<NotTakenFace> all(List<NotTaken> list) {
        var faces = new ArrayList<NotTakenFace>();
        list.stream()
                .map(NotTaken::setUp)
                .distinct()
                .forEach(number -> faces.add(new NotTakenFace(
                        number,
                        list.stream()
                                .filter(each -> each.setUp() == number)
                                .map(each -> new Not(
                                        each.machine() + ", " + each.holder(),
                                        each.verdict().says()))
                                .toList())));
        return faces;
    }
}
