package ribmark.bonemap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import ribmark.bonemap.StandingPictures.Shown;
import ribmark.competence.Standing;
import ribmark.curriculum.BoneWords;
import ribmark.curriculum.Step;
import ribmark.curriculum.StepPicture;

/** U-16 and U-45: the picture of standings says by word and pattern what the table beside it says, and nothing by colour. */
class StandingPicturesTest {

    private final StandingPictures pictures = new StandingPictures(Lamb.MAP);
    private final List<Step> steps = Lamb.CURRICULUM.breakdown().steps();

    /** Every standing in turn, step after step. */
    private Map<String, Standing> mixed() {
        Map<String, Standing> held = new LinkedHashMap<>();
        steps.forEach(step -> held.put(step.id(), Standing.values()[step.number() % Standing.values().length]));
        return held;
    }

    private Document whole(Map<String, Standing> held) {
        return parsed(pictures.file(held, "whole").orElseThrow());
    }

    private static Document parsed(String svg) {
        return Jsoup.parse(svg, "", Parser.xmlParser());
    }

    @Test
    void the_table_has_a_row_for_every_step_with_its_standing_in_words() {
        Map<String, Standing> held = mixed();
        Shown shown = pictures.shown("Ada", held, "/a/");

        assertThat(shown.picture().title()).isEqualTo("Ada: where each step stands");
        assertThat(shown.picture().words())
                .extracting(StepPicture.Words::mark)
                .containsExactlyElementsOf(steps.stream()
                        .map(step -> step.number() + " " + held.get(step.id()).word())
                        .toList());
    }

    @Test
    void picture_and_table_say_the_same_word_for_word_and_bone_for_bone() {
        Map<String, Standing> held = mixed();
        Document file = whole(held);
        List<StepPicture.Words> rows =
                pictures.shown("Ada", held, "/a/").picture().words();

        assertThat(file.select("text").eachText()).doesNotHaveDuplicates().hasSizeGreaterThan(12);
        assertThat(rows)
                .extracting(StepPicture.Words::mark)
                .containsAll(file.select("text").eachText());
        rows.forEach(row -> assertThat(file.select("desc").text()).contains(row.mark() + ": " + row.meaning() + "."));
        Map<String, List<String>> drawn = new LinkedHashMap<>();
        for (Element bone : file.select("g[id]:has(> title)")) {
            drawn.computeIfAbsent(word(bone), fill -> new ArrayList<>()).add(bone.id());
        }
        drawn.remove("faint");
        drawn.forEach((fill, bones) -> bones.forEach(bone -> assertThat(said(rows, fill))
                .as(bone + ", " + fill)
                .anyMatch(words -> words.contains(name(bone)) || words.contains("all of the " + region(bone)))));
        assertThat(drawn.keySet())
                .containsExactlyInAnyOrder(
                        "dots", "slanting lines", "plain, thick edge", "filled in", "filled in with gaps");
    }

    /** What the rows say after the word of a fill, numbers of neighbours said one by one. */
    private static List<String> said(List<StepPicture.Words> rows, String fill) {
        return rows.stream()
                .map(row -> row.meaning().toLowerCase(java.util.Locale.ROOT))
                .filter(meaning -> meaning.startsWith(fill + ":"))
                .map(StandingPicturesTest::oneByOne)
                .toList();
    }

    private static String oneByOne(String words) {
        return java.util.regex.Pattern.compile("(\\d+) to (\\d+)")
                .matcher(words)
                .replaceAll(run -> java.util.stream.IntStream.rangeClosed(
                                Integer.parseInt(run.group(1)), Integer.parseInt(run.group(2)))
                        .mapToObj(Integer::toString)
                        .collect(Collectors.joining(" ")));
    }

    /** The number of a bone, or its name. */
    private static String name(String bone) {
        String said =
                new BoneWords(Lamb.CURRICULUM.skeleton()).say(List.of(bone)).replaceAll(", (left|right)", "");
        return said.matches(".* \\d+") ? said.replaceAll(".* ", "") : said;
    }

    private static String region(String bone) {
        return Lamb.CURRICULUM.skeleton().bone(bone).orElseThrow().region();
    }

    private static String word(Element bone) {
        Element path = bone.selectFirst("path");
        boolean faint = !bone.select("g[opacity]").isEmpty();
        String fill = path.attr("fill");
        for (Fill each : Fill.values()) {
            boolean thick = Double.parseDouble(path.attr("stroke-width")) > 3;
            if (each.paint().equals(fill)
                    && (each == Fill.OPEN) == (thick && !each.isPattern() && each != Fill.SOLID)) {
                return faint ? "faint" : each.word();
            }
        }
        return "faint";
    }

    @Test
    void inks_are_those_of_the_page_alone_and_every_standing_has_a_pattern_of_its_own() {
        String svg = pictures.file(mixed(), "whole").orElseThrow();
        List<String> inks = java.util.regex.Pattern.compile("#[0-9a-f]{6}")
                .matcher(svg)
                .results()
                .map(java.util.regex.MatchResult::group)
                .distinct()
                .toList();

        assertThat(inks).isSubsetOf(Ink.INK, Ink.LEAF, Ink.PAPER, Ink.BUFF, Ink.RULE);
        assertThat(java.util.Arrays.stream(Standing.values()).map(Fill::of)).doesNotHaveDuplicates();
        assertThat(java.util.Arrays.stream(Standing.values()).map(Fill::of).map(Fill::word))
                .doesNotHaveDuplicates();
    }

    @Test
    void a_line_is_dashed_until_every_step_that_cuts_along_it_is_signed_off() {
        Map<String, Standing> held = mixed();
        steps.forEach(step -> held.put(step.id(), Standing.SIGNED_OFF));
        assertThat(whole(held).select("g[id^=line-] path[stroke-dasharray]")).isEmpty();
        held.put("fores-saw", Standing.DUE_AGAIN);

        assertThat(whole(held)
                        .select("g[id^=line-]:has(path[stroke-dasharray])")
                        .eachAttr("id"))
                .containsExactly("line-fore-6-7");
        assertThat(pictures.shown("Ada", held, "/a/").picture().words())
                .anyMatch(row ->
                        row.mark().equals("8 due again") && row.meaning().contains("dashed line: Between rib 6"));
    }

    @Test
    void the_parts_for_a_telephone_show_every_step_that_the_whole_shows() {
        Map<String, Standing> held = mixed();
        List<String> closer = new ArrayList<>();
        pictures.shown("Ada", held, "/a/")
                .parts()
                .forEach(part ->
                        closer.addAll(parsed(pictures.file(held, part.name()).orElseThrow())
                                .select("text")
                                .eachText()));

        assertThat(closer).containsAll(whole(held).select("text").eachText());
        assertThat(pictures.shown("Ada", held, "/a/").parts())
                .extracting(StandingPictures.Part::name)
                .startsWith("trunk", "hip");
        assertThat(pictures.file(held, "nowhere")).isEmpty();
    }

    @Test
    void a_bone_of_several_steps_carries_the_one_about_the_fewest_bones_and_the_others_say_which() {
        Map<String, Standing> held = mixed();
        List<StepPicture.Words> rows =
                pictures.shown("Ada", held, "/a/").picture().words();

        assertThat(rows)
                .anyMatch(row -> row.mark().startsWith("16 ") && row.meaning().contains("femur, left and right"));
        assertThat(rows)
                .anyMatch(row -> row.mark().startsWith("11 ") && row.meaning().startsWith("Its bones carry steps "));
        assertThat(rows)
                .anyMatch(row -> row.mark().startsWith("1 ") && row.meaning().equals("No bones"));
    }
}
