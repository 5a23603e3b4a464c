package chargehand.cli;

import chargehand.book.json.RecordJson;
import chargehand.method.estimate.Estimate;
import chargehand.method.plan.Bound;
import chargehand.method.plan.Method;
import chargehand.method.plan.NotTaken;
import chargehand.method.plan.Planned;
import chargehand.method.replay.Fault;
import chargehand.method.replay.Proof;
import chargehand.method.search.Other;
import chargehand.method.wish.Wish;
import chargehand.method.wish.Wishes;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A method, or the reasons why there is none, as a tree for JSON. */
final class MethodTree {
    private static final RecordJson<Method> METHOD = RecordJson.of(Method.class);
    private static final RecordJson<Bound> BOUND = RecordJson.of(Bound.class);
    private static final RecordJson<NotTaken> NOT_TAKEN = RecordJson.of(NotTaken.class);

    private static final RecordJson<Estimate> ESTIMATE = RecordJson.of(Estimate.class);

    private MethodTree() {}

    static Map<String, Object> of(MethodAnswer answer) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("method", METHOD.tree(answer.proved().method()));
        tree.put("replay", replay(answer.proved().proof()));
        tree.put("weighed", answer.proved().weighed());
        tree.put("bound", BOUND.tree(answer.proved().bound()));
        tree.put("asked", says(answer.wishes()));
        tree.put("estimate", ESTIMATE.tree(answer.estimate()));
        if (!answer.notTaken().isEmpty()) {
            tree.put("notTaken", answer.notTaken().stream().map(NOT_TAKEN::tree).toList());
        }
        if (!answer.others().isEmpty()) {
            tree.put("others", answer.others().stream().map(MethodTree::other).toList());
        }
        return tree;
    }

    private static List<String> says(Wishes wishes) {
        return wishes.list().stream().map(Wish::says).toList();
    }

    private static Map<String, Object> other(Other other) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("asked", says(other.wishes()));
        tree.put("method", METHOD.tree(other.ready().method()));
        tree.put("bound", BOUND.tree(other.ready().bound()));
        return tree;
    }

    private static Map<String, Object> replay(Proof proof) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("made", proof.made());
        tree.put("worst", Map.of("mm", proof.worst().mm(), "in", proof.worst().in()));
        tree.put("faults", proof.faults().stream().map(Fault::say).toList());
        return tree;
    }

    static Map<String, Object> of(List<Planned.Reason> reasons) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("reasons", reasons.stream().map(MethodTree::reason).toList());
        return tree;
    }

    private static Map<String, Object> reason(Planned.Reason reason) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("code", reason.code().name());
        tree.put("say", reason.say());
        tree.put("unlock", reason.unlock());
        return tree;
    }
}
