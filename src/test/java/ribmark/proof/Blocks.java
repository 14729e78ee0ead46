package ribmark.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The slips an author makes with whole steps and entries: in the wrong order, left out, written twice, pointing in a circle. */
final class Blocks {

    /** A step as it stands in its file. */
    private record Written(String id, String file, int start, int end, List<String> needs, boolean works) {}

    private final Pen pen;
    private final Map<String, Written> steps = new LinkedHashMap<>();
    private final Map<String, Supplier<Optional<Mutant>>> kinds = new LinkedHashMap<>();

    Blocks(Pen pen, List<String> stages) {
        this.pen = pen;
        stages.forEach(stage -> read("content/lamb/" + stage + ".yaml"));
        kinds.put("order of steps", this::stepsExchanged);
        kinds.put("order of stages", () -> stagesExchanged(stages));
        kinds.put("circle", this::circle);
        kinds.put("need left out", this::needLeftOut);
        kinds.put("soft edge forgotten", () -> holdLeftOut("soft edge forgotten", "(?:IS|SYN|LN|STL|PL|AW)-?"));
        kinds.put("hold forgotten", () -> holdLeftOut("hold forgotten", "[A-Z]"));
        kinds.put("frees and leaves exchanged", this::exchanged);
        kinds.put("piece not named", this::notNamed);
        kinds.put("id given twice", this::twice);
        kinds.put("line left out", this::lineLeftOut);
        kinds.put("step not asked about", () -> onlyOne("step not asked about", "assessments/lamb/questions.yaml"));
        kinds.put(
                "claim without source",
                () -> pen.change(
                                "claim without source",
                                pen.spots(Slips.STAGES + "|" + Slips.CUTS, "^    rests-on: ?(\n(?:      - .*\n?)+)"),
                                claims -> " []\n")
                        .map(m -> new Mutant(m.kind(), m.file(), m.text(), m.line(), 15, m.shown())));
        kinds.put(
                "end of a piece",
                () -> pen.change(
                        "end of a piece",
                        pen.spots(Slips.CUTS, "becomes: (parted|saleable|bone|offcut)\n    bones: \\[[^\\]]"),
                        word -> word.equals("parted") ? pen.any(List.of("saleable", "bone")) : "parted"));
        kinds.put(
                "may be left out",
                () -> pen.changeNowhere(
                        "may be left out", worksWithPieces(), word -> word.equals("true") ? "false" : "true"));
    }

    Map<String, Supplier<Optional<Mutant>>> kinds() {
        return kinds;
    }

    private void read(String file) {
        Matcher found =
                Pattern.compile("(?ms)^  - id: (\\S+)\n.*?(?=^  - id: |\\z)").matcher(pen.text(file));
        while (found.find()) {
            String block = found.group();
            Matcher needs = Pattern.compile("(?m)^    needs: \\[(.*)\\]$").matcher(block);
            List<String> needed = needs.find() && !needs.group(1).isBlank()
                    ? Arrays.asList(needs.group(1).split(", *"))
                    : List.of();
            boolean works = !block.contains("operations: []");
            steps.put(found.group(1), new Written(found.group(1), file, found.start(), found.end(), needed, works));
        }
    }

    private Optional<Mutant> stepsExchanged() {
        Written later = pen.any(List.copyOf(steps.values()));
        List<Written> earlier = later.needs().stream()
                .map(steps::get)
                .filter(step -> step.file().equals(later.file()))
                .toList();
        if (earlier.isEmpty()) {
            return Optional.empty();
        }
        Written first = pen.any(earlier);
        String text = pen.text(later.file());
        String changed = text.substring(0, first.start())
                + text.substring(later.start(), later.end()).stripTrailing() + "\n\n"
                + text.substring(first.start(), first.end())
                + text.substring(first.end(), later.start())
                + text.substring(later.end());
        return Optional.of(new Mutant(
                "order of steps", later.file(), changed, Mutant.NOWHERE, 0, later.id() + " before " + first.id()));
    }

    private Optional<Mutant> stagesExchanged(List<String> stages) {
        int one = pen.random().nextInt(stages.size() - 1);
        List<String> turned = new ArrayList<>(stages);
        java.util.Collections.swap(turned, one, pen.random().nextBoolean() ? stages.size() - 1 : 0);
        String line = "stages: [" + String.join(", ", stages) + "]";
        String file = "content/lamb/breakdown.yaml";
        String changed = pen.text(file).replace(line, "stages: [" + String.join(", ", turned) + "]");
        return changed.equals(pen.text(file))
                ? Optional.empty()
                : Optional.of(
                        new Mutant("order of stages", file, changed, Mutant.NOWHERE, 0, String.join(", ", turned)));
    }

    private Set<String> closure(String id, String from, String without) {
        Set<String> all = new LinkedHashSet<>();
        List<String> waiting = new ArrayList<>(List.of(id));
        while (!waiting.isEmpty()) {
            String step = waiting.remove(0);
            steps.get(step).needs().stream()
                    .filter(need -> !(step.equals(from) && need.equals(without)))
                    .filter(all::add)
                    .forEach(waiting::add);
        }
        return all;
    }

    private Optional<Mutant> circle() {
        Written last = pen.any(List.copyOf(steps.values()));
        List<String> before = List.copyOf(closure(last.id(), "", ""));
        if (before.isEmpty()) {
            return Optional.empty();
        }
        Written first = steps.get(pen.any(before));
        return needs(first).map(spot -> {
            List<String> needs = new ArrayList<>(first.needs());
            needs.add(last.id());
            String list = "[" + String.join(", ", needs) + "]";
            Mutant m = pen.replaced("circle", spot, list, true);
            return new Mutant(
                    m.kind(), m.file(), m.text(), m.line(), m.column() + list.indexOf(last.id() + "]"), m.shown());
        });
    }

    private Optional<Pen.Spot> needs(Written step) {
        return pen.spots(step.file().replace(".", "\\."), "^    needs: (\\[.*\\])$").stream()
                .filter(spot -> spot.start() > step.start() && spot.end() < step.end())
                .findFirst();
    }

    /** A need is missed where a step that works on bones could then come before one it used to follow. */
    private Optional<Mutant> needLeftOut() {
        Written step = pen.any(List.copyOf(steps.values()));
        if (step.needs().isEmpty()) {
            return Optional.empty();
        }
        String need = pen.any(step.needs());
        boolean missed = steps.values().stream().filter(Written::works).anyMatch(later -> {
            Set<String> lost = closure(later.id(), "", "");
            lost.removeAll(closure(later.id(), step.id(), need));
            return lost.stream().anyMatch(id -> steps.get(id).works());
        });
        List<String> left = step.needs().stream().filter(n -> !n.equals(need)).toList();
        return missed
                ? needs(step)
                        .map(spot -> pen.replaced("need left out", spot, "[" + String.join(", ", left) + "]", false))
                : Optional.empty();
    }

    private Optional<Mutant> holdLeftOut(String kind, String begins) {
        List<Pen.Spot> lists = pen.spots(Slips.STAGES, Slips.DONE);
        List<Pen.Spot> ids = pen.within(lists, "((?<=[\\[ ])\"?" + begins + "[^,\\]]*(?:, |(?=\\])))");
        if (ids.isEmpty()) {
            return Optional.empty();
        }
        Pen.Spot spot = pen.any(ids);
        return Optional.of(pen.replaced(kind, spot, "", false)).map(m -> tidied(m));
    }

    /** Without a comma that leads nowhere; a list left empty goes with its line. */
    private static Mutant tidied(Mutant m) {
        String text = m.text()
                .replaceAll(", \\]", "]")
                .replaceAll("    operations:\n      - (?:sever|lift): \\[\\]\n(?!      )", "    operations: []\n")
                .replaceAll("\n      - (?:sever|lift): \\[\\](?=\n)", "")
                .replaceAll(
                        "    operations:\n      - saw: \\[\\]\n        plane: \\S+\n(?!      )",
                        "    operations: []\n");
        return new Mutant(m.kind(), m.file(), text, Mutant.NOWHERE, 0, m.shown());
    }

    private Optional<Mutant> exchanged() {
        return pen.changeNowhere(
                "frees and leaves exchanged",
                pen.spots(Slips.STAGES, "(    frees: \\[[^\\]]+\\]\n    leaves: \\[[^\\]]+\\])"),
                both -> both.replace("frees", "x").replace("leaves", "frees").replace("x", "leaves"));
    }

    private Optional<Mutant> notNamed() {
        return pen.changeNowhere(
                "piece not named",
                pen.within(pen.spots(Slips.STAGES, "^    (?:frees|leaves): (\\[.+\\])$"), "((?<=\\[)[a-z-]+(?:, )?)"),
                cut -> "");
    }

    private Optional<Mutant> twice() {
        String file = pen.any(pen.files(Slips.STAGES + "|" + Slips.CUTS + "|" + Slips.MARKS
                + "|.*criteria\\.yaml|.*questions\\.yaml|.*trim\\.yaml"));
        List<Pen.Spot> ids = pen.spots(file.replace(".", "\\."), "^  - (?:\\{)?id: ([a-z0-9-]+)");
        if (ids.size() < 2) {
            return Optional.empty();
        }
        Pen.Spot kept = ids.get(pen.random().nextInt(ids.size() - 1));
        return pen.change("id given twice", ids.subList(ids.indexOf(kept) + 1, ids.size()), id -> pen.at(kept));
    }

    private Optional<Mutant> lineLeftOut() {
        return pen.changeNowhere(
                "line left out",
                pen.spots(
                        Slips.ANY,
                        "(^ +(?:title|what-for|sides|optional|needs|tools|also-mind|hands|frees|leaves|name|comes|becomes"
                                + "|text|heading|step|unit|division|highest|weight|standing|sheets): .*\n)"),
                line -> "");
    }

    /** Moves the only entry of a step to another step. */
    private Optional<Mutant> onlyOne(String kind, String file) {
        List<Pen.Spot> pointers = pen.spots(file.replace(".", "\\."), "step: ([a-z-]+)");
        Map<String, Long> many =
                pointers.stream().collect(Collectors.groupingBy(pen::at, HashMap::new, Collectors.counting()));
        List<Pen.Spot> alone =
                pointers.stream().filter(spot -> many.get(pen.at(spot)) == 1).toList();
        return pen.changeNowhere(kind, alone, step -> pen.any(List.copyOf(steps.keySet())));
    }

    private List<Pen.Spot> worksWithPieces() {
        return pen.spots(Slips.STAGES, "^    optional: (true|false)$").stream()
                .filter(spot -> steps.values().stream()
                        .filter(Written::works)
                        .anyMatch(step -> step.file().equals(spot.file())
                                && spot.start() > step.start()
                                && spot.end() < step.end()))
                .toList();
    }
}
