package ribmark.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;
import ribmark.slips.Model;

/** Checks the figures: tables that add up, limits in order, and a basis that fits how its source was seen. */
final class Figures {

    /** Figures are written to a tenth of a percent, so a sum may miss 100 by a rounding (our own line). */
    private static final double SUM_TOLERANCE = 0.05;

    /** Room for the sum of decimal fractions in binary. */
    private static final double BINARY = 1e-9;

    private static final Set<String> NOT_READ = Set.of("from memory", "derived", "none");

    private final Shelf shelf;
    private final Findings found;

    private Figures(Shelf shelf, Findings found) {
        this.shelf = shelf;
        this.found = found;
    }

    static void check(Shelf shelf, Findings found) {
        Figures figures = new Figures(shelf, found);
        shelf.tables().stream().filter(figures::isReadable).forEach(figures::table);
        if (figures.isReadable(shelf.trim())) {
            shelf.trim().all("measures[]").forEach(figures::limits);
        }
        if (figures.isReadable(shelf.breakdown())) {
            figures.inOrder(shelf.breakdown().get("at-intake"), "lowest-kg", "highest-kg");
        }
        if (figures.isReadable(shelf.weighing())) {
            shelf.weighing().all("lines[].moves[]").forEach(figures::movesKeepTheWhole);
        }
        figures.publishedMeansRead();
    }

    /** A number that is none is told by itself, and no sum is drawn from it. */
    private boolean isReadable(Node file) {
        return !found.any(List.of("C01"), List.of(file));
    }

    private void table(Node table) {
        addsUp(table);
        inOrder(table.get("bounds"), "lowest-kg", "highest-kg");
        inOrder(table.get("gap"), "balanced-to-percent", "query-to-percent");
        pairsHaveSpread(table);
        if (shelf.weighing().isThere()) {
            spreadsGoTogether(table);
        }
    }

    private void addsUp(Node table) {
        List<Node> expected = table.all("rows[].expected");
        double sum = expected.stream().mapToDouble(Node::number).sum();
        if (!expected.isEmpty() && Math.abs(sum - 100) > SUM_TOLERANCE + BINARY) {
            found.add(
                    "C040",
                    table.get("rows"),
                    String.format(
                            Locale.ROOT, "The expected yields add up to %.2f %% of the carcase, not to 100 %%.", sum),
                    "They are " + expected.stream().map(Node::text).collect(Collectors.joining(" + "))
                            + ". Look for a cut that is missing, counted twice or mistyped.",
                    new Also(
                            "The last row is", expected.get(expected.size() - 1).place()));
        }
    }

    private void inOrder(Node owner, String lowest, String highest) {
        boolean both = owner.get(lowest).maybeNumber().isPresent()
                && owner.get(highest).maybeNumber().isPresent();
        if (both && owner.get(lowest).number() > owner.get(highest).number()) {
            found.add(
                    "C041",
                    owner.get(highest),
                    "The highest, " + owner.get(highest).text() + ", is below the lowest, "
                            + owner.get(lowest).text() + ".",
                    "Exchange the two, or mend the one that is mistyped.",
                    new Also("The lowest stands in", owner.get(lowest).place()));
        }
    }

    private void limits(Node measure) {
        inOrder(measure, "lowest", "highest");
        if (measure.get("name").isThere()
                && !measure.get("lowest").isThere()
                && !measure.get("highest").isThere()) {
            found.add(
                    "C041",
                    measure.key("highest"),
                    "This measure has neither a lowest nor a highest value.",
                    "Give at least one of the two.");
        }
    }

    private void pairsHaveSpread(Node table) {
        for (Node row : table.all("rows[]")) {
            boolean pair = row.get("pair").yes();
            boolean spread = row.get("pair-spread").number() > 0;
            if (row.get("pair").isThere() && row.get("pair-spread").isThere() && pair != spread) {
                found.add(
                        "C042",
                        row.get("pair-spread"),
                        pair
                                ? "A left and right pair needs a spread between the two."
                                : "A cut that comes once has no pair-spread.",
                        pair ? "Write how far left and right lie apart, for example 0.02." : "Write 0.",
                        new Also(
                                "Whether it is a pair stands in",
                                row.get("pair").place()));
            }
        }
    }

    private void spreadsGoTogether(Node table) {
        List<Node> spreads = table.all("rows[].sd");
        double[] sds = spreads.stream().mapToDouble(Node::number).toArray();
        if (sds.length > 0) {
            Model.whyNotWhole(sds)
                    .ifPresent(why -> found.add(
                            "C044",
                            spreads.stream()
                                    .max(Comparator.comparingDouble(Node::number))
                                    .orElseThrow(),
                            why,
                            "Mend this spread: its square is less than the squares of the others together."));
        }
    }

    private void movesKeepTheWhole(Node move) {
        double sum =
                move.all("points[].points").stream().mapToDouble(Node::number).sum();
        if (Math.abs(sum) > BINARY) {
            found.add(
                    "C045",
                    move.get("points"),
                    String.format(Locale.ROOT, "The points of this move add up to %.2f, not to nothing.", sum),
                    "What one cut gains another loses. Look for a sign or a figure that is mistyped.");
        }
    }

    /** One message for each source, however many claims rest on it. */
    private void publishedMeansRead() {
        Map<String, Node> notRead = new LinkedHashMap<>();
        shelf.sources().all("sources[]").stream()
                .filter(source -> NOT_READ.contains(source.get("seen").text()))
                .forEach(source -> notRead.put(source.get("key").text(), source));
        Map<String, List<Node>> claimed = new LinkedHashMap<>();
        shelf.all().stream()
                .flatMap(Figures::claims)
                .filter(claim -> claim.get("basis").text().equals("published"))
                .filter(claim -> notRead.containsKey(claim.get("source").text()))
                .forEach(claim -> claimed.computeIfAbsent(claim.get("source").text(), key -> new ArrayList<>())
                        .add(claim));
        claimed.forEach((key, claims) -> notRead(claims, notRead.get(key)));
    }

    private void notRead(List<Node> claims, Node source) {
        Node first = claims.get(0);
        List<Also> also = new ArrayList<>();
        also.add(new Also("Its source is named in", first.get("source").place()));
        also.add(new Also("How that was seen stands in", source.get("seen").place()));
        claims.stream()
                .skip(1)
                .forEach(claim ->
                        also.add(new Also("So is another in", claim.get("basis").place())));
        found.add(
                "C051",
                first.get("basis"),
                "This is called published, but nobody has read “"
                        + first.get("source").text() + "”.",
                "Write how it is really known, or name the publication it was read in.",
                also.toArray(Also[]::new));
    }

    private static Stream<Node> claims(Node file) {
        return Stream.concat(
                file.anywhere("rests-on").stream().flatMap(list -> list.items().stream()),
                file.all("cuts[].same-as[]").stream());
    }
}
