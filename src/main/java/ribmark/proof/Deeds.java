package ribmark.proof;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Ids;
import ribmark.anatomy.Operation;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Refused;
import ribmark.contentfiles.Node;

/** What the steps do to one animal, each operation worked out once however often the steps are tried. */
final class Deeds {

    private final Skeleton skeleton;
    private final Ids ids;
    private final Map<Node, List<Operation>> known = new IdentityHashMap<>();

    Deeds(Skeleton skeleton) {
        this.skeleton = skeleton;
        this.ids = Ids.of(skeleton);
    }

    Skeleton skeleton() {
        return skeleton;
    }

    Ids ids() {
        return ids;
    }

    /** The animal after a step, or nothing when an operation is refused; then the one told learns which id is to blame. */
    Optional<Animal> after(Animal before, Node step, BiConsumer<Node, Refused> told) {
        Animal now = before;
        for (Node written : step.get("operations").items()) {
            try {
                now = now.after(of(written));
            } catch (Refused e) {
                told.accept(culprit(written, e.getMessage()), e);
                return Optional.empty();
            }
        }
        return Optional.of(now);
    }

    /** The operations one written entry stands for in this animal. */
    List<Operation> of(Node written) {
        List<Operation> operations = known.get(written);
        if (operations == null) {
            operations = operations(written, ids);
            known.put(written, operations);
        }
        return operations;
    }

    static List<Operation> operations(Node written, Ids ids) {
        return ids.operations(operation(written));
    }

    /** One entry as it is written, for every animal. */
    static Operation operation(Node written) {
        return Operation.of(
                texts(written, "sever"),
                texts(written, "saw"),
                written.get("plane").maybeText().orElse(null),
                texts(written, "lift"));
    }

    private static List<String> texts(Node written, String verb) {
        return written.get(verb).isThere() ? written.get(verb).texts() : null;
    }

    /** The written id the refusal speaks of: the one that stands for the id it quotes. */
    Node culprit(Node written, String sentence) {
        for (Node id : written(written)) {
            if (sentence.contains("“" + id.text() + "”")
                    || standsFor(id.text()).stream().anyMatch(each -> sentence.contains("“" + each + "”"))) {
                return id;
            }
        }
        return written;
    }

    /** Every id written in one operation. */
    static List<Node> written(Node operation) {
        return List.of("sever", "saw", "lift").stream()
                .flatMap(verb -> operation.get(verb).items().stream())
                .toList();
    }

    private List<String> standsFor(String expression) {
        try {
            return ids.expand(expression);
        } catch (Refused e) {
            return List.of(expression);
        }
    }
}
