package ribmark.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ribmark.basics.Words;
import ribmark.proof.ContentProblem.Also;

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
        steps.forEach((id, step) -> {
            for (Node need : needs(id)) {
                if (steps.containsKey(need.text()) && !before.contains(need.text()) && !circled.contains(id)) {
                    tooEarly(id, need);
                }
                optionalNeed(id, need);
            }
            before.add(id);
        });
    }

    private void tooEarly(String id, Node need) {
        found.add(
                "C031",
                need,
                "The step “" + id + "” stands before “" + need.text() + "”, which it needs.",
                "Move one of the two, or take out this need.",
                new Also(
                        "The later one stands in",
                        steps.get(need.text()).get("id").place()));
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
