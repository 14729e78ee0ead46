package ribmark.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ribmark.basics.Words;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/** Checks that the steps can be worked in the order they stand in, and that none waits for itself. */
final class Order {

    private final Map<String, Node> steps = new LinkedHashMap<>();
    private final Findings found;
    private final Set<String> circled = new HashSet<>();

    private Order(Shelf shelf, Findings found) {
        shelf.steps().forEach(step -> steps.putIfAbsent(step.get("id").text(), step));
        this.found = found;
    }

    static void check(Shelf shelf, Findings found) {
        Order order = new Order(shelf, found);
        order.steps.keySet().forEach(id -> order.follow(id, new ArrayList<>()));
        order.standsInOrder();
    }

    /** Follows the needs of a step until they end or come back to where they began. */
    private void follow(String id, List<String> way) {
        if (way.contains(id)) {
            circle(way.subList(way.indexOf(id), way.size()));
        } else if (steps.containsKey(id) && !circled.contains(id)) {
            way.add(id);
            needs(id).forEach(need -> follow(need.text(), way));
            way.remove(way.size() - 1);
        }
    }

    private List<Node> needs(String id) {
        return steps.get(id).get("needs").items();
    }

    private Node need(String from, String to) {
        return needs(from).stream()
                .filter(need -> need.text().equals(to))
                .findFirst()
                .orElseThrow();
    }

    /** Told from the need that goes against the order of the files: it is the likeliest to be wrong. */
    private void circle(List<String> way) {
        if (!circled.addAll(way)) {
            return;
        }
        List<String> order = List.copyOf(steps.keySet());
        List<String> turned = new ArrayList<>(way);
        while (order.indexOf(turned.get(0)) > order.indexOf(turned.get(1 % way.size()))) {
            Collections.rotate(turned, 1);
        }
        Also[] links = new Also[way.size()];
        for (int i = 0; i < links.length; i++) {
            String from = turned.get(i);
            String to = turned.get((i + 1) % links.length);
            links[i] = new Also(from + " needs " + to + ":", need(from, to).place());
        }
        String headline = links.length == 1
                ? "This step waits for itself, so it can never begin."
                : Words.capital(Words.count(links.length))
                        + " steps wait for each other, so none of them can ever begin.";
        found.add(
                "C030",
                need(turned.get(0), turned.get(1 % links.length)),
                headline,
                "Take out one of these needs; the first goes against the order of the steps.",
                links);
    }

    private void standsInOrder() {
        Set<String> before = new HashSet<>();
        List<Node> acrossStages = new ArrayList<>();
        steps.forEach((id, step) -> {
            List<Node> early = new ArrayList<>();
            for (Node need : needs(id)) {
                if (steps.containsKey(need.text()) && !before.contains(need.text()) && !circled.contains(id)) {
                    boolean sameStage = steps.get(need.text()).file().equals(need.file());
                    (sameStage ? early : acrossStages).add(need);
                }
                optionalNeed(id, need);
            }
            tooEarly(early);
            before.add(id);
        });
        tooEarly(acrossStages);
    }

    /** One message for a step that stands in the wrong place, and one for stages that do, however many needs show it. */
    private void tooEarly(List<Node> needs) {
        if (needs.isEmpty()) {
            return;
        }
        List<Also> also = new ArrayList<>();
        for (Node need : needs) {
            if (need != needs.get(0)) {
                also.add(new Also("The same is so in", need.place()));
            }
            also.add(new Also(
                    "“" + need.text() + "” stands in",
                    steps.get(need.text()).get("id").place()));
        }
        String id = idOf(needs.get(0));
        found.add(
                "C031",
                needs.get(0),
                "The step “" + id + "” stands before “" + needs.get(0).text() + "”, which it needs.",
                "Move one of the two, or their stages, or take out this need.",
                also.toArray(Also[]::new));
    }

    private String idOf(Node need) {
        return steps.entrySet().stream()
                .filter(step -> step.getValue().get("needs").items().contains(need))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    private void optionalNeed(String id, Node need) {
        Node other = steps.get(need.text());
        if (other != null
                && other.get("optional").yes()
                && !steps.get(id).get("optional").yes()) {
            found.add(
                    "C038",
                    need,
                    "The step “" + id + "” needs “" + need.text() + "”, which may be left out.",
                    "Take out this need, or make this step optional too.",
                    new Also("Optional in", other.get("optional").place()));
        }
    }
}
