package chargehand.web.method;

import chargehand.book.use.JobFile;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is asked of a job's method beside the part.
 *
 * @param wishes each as people write it
 * @param suggested what else might be asked, to choose from
 */
public record Asked(List<Wanted> wishes, List<String> suggested) {
    /**
     * One wish.
     *
     * @param says it as people write it
     * @param others the other wishes, which stay when this one is left out
     */
    public record Wanted(String says, List<String> others) {}

    static Asked of(JobFile file) {
        List<String> says = file.wishes();
        List<Wanted> wishes = says.stream()
                .map(wish -> new Wanted(
                        wish, says.stream().filter(other -> !other.equals(wish)).toList()))
                .toList();
        return new Asked(wishes, suggested(file));
    }

    /** Every wish, to be sent along. */
    public List<String> all() {
        return wishes.stream().map(Wanted::says).toList();
    }

    /** To do without what the method uses, and to hold by a section of the part. */
    private static List<String> suggested(JobFile file) {
        Set<String> suggested = new LinkedHashSet<>();
        file.planned().flatMap(planned -> planned.method()).ifPresent(method -> {
            method.setUps().forEach(setUp -> suggested.add("without " + setUp.machine()));
            method.setUps().forEach(setUp -> suggested.add("without " + OtherFace.holder(setUp)));
            suggested.add("without stock " + method.stock().piece());
        });
        suggested.add("without parting off");
        var list = new ArrayList<>(suggested);
        list.removeAll(file.wishes());
        return list;
    }
}
