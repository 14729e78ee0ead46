package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribmark.contentfiles.ContentFiles;

/** Files that are no content at all, or not quite: each is told once, none is passed over, and none ends in a fault. */
class OddFilesTest {

    private static final String BONES = "content/goat/skeleton.csv";
    private static final String JOINTS = "content/goat/joints.csv";
    private static final String HEAD = "id,name_en,name_la,side,region,uberon,source";

    @TempDir
    private Path folder;

    private final SmallCollege college = SmallCollege.sound();

    @Test
    void a_table_without_rows_is_told() {
        isTold(college.holding(BONES, ""), "C001", BONES, "This table has no rows.");
        isTold(college.holding(BONES, HEAD + "\n"), "C001", BONES, "This table has no rows.");
    }

    @Test
    void a_column_that_is_missing_mistyped_twice_or_unknown_is_told_once() {
        String bones = college.text(BONES);
        isTold(
                college.holding(BONES, bones.replace("name_la,side", "name_la,seite")),
                "C010",
                BONES,
                "“seite” is not a column that this table has.");
        isTold(
                college.holding(BONES, bones.replace("name_la,side", "side,side")),
                "C004",
                BONES,
                "“side” is written twice here.");
        isTold(
                college.holding(BONES, bones.replaceAll("(?m)^(id),", "")),
                "C011",
                BONES,
                "This table has no column id.");
        isTold(
                college.holding(BONES, bones.replaceAll("(?m)$", ",x").replaceAll("\n,x$", "\n")),
                "C010",
                BONES,
                "“x” is not a column that this table has.");
        isTold(
                college.holding(BONES, bones)
                        .holding(JOINTS, college.text(JOINTS).replace("end_b", "endb")),
                "C010",
                JOINTS,
                "“endb” is not a column that this table has.");
    }

    @Test
    void a_file_that_holds_nothing_is_empty_however_that_is_written() {
        for (String nothing : List.of("", "# a remark\n", "null\n", "---\n")) {
            isTold(
                    college.holding("assessments/marks.yaml", nothing),
                    "C001",
                    "assessments/marks.yaml",
                    "This file is empty.");
        }
    }

    @Test
    void a_stage_that_nobody_names_is_told_once_whatever_it_holds() {
        isTold(
                college.holding("content/kid/more.yaml", "a: 1\n"),
                "C007",
                "content/kid/more.yaml",
                "No breakdown names this stage.");
    }

    @Test
    void a_table_that_nobody_asks_for_is_told() {
        isTold(
                college.holding("content/goat/more.csv", "a,b\n1,2\n"),
                "C007",
                "content/goat/more.csv",
                "No part of a curriculum has a file of this name here.");
    }

    @Test
    void a_folder_a_broken_link_and_another_ending_do_not_hide_that_a_file_was_meant() throws IOException {
        college.writeTo(folder);
        Files.createDirectory(folder.resolve("content/kid/close.yaml"));
        Files.createSymbolicLink(folder.resolve("content/kid/link.yaml"), Path.of("nowhere"));
        Files.writeString(folder.resolve("content/goat/terms.yml"), "terms: []\n");
        Files.writeString(folder.resolve("content/goat/terms.yaml.txt"), "terms: []\n");
        Files.writeString(folder.resolve("content/goat/.terms.yaml.txt"), "left by an editor");
        Files.writeString(folder.resolve("content/goat/README.txt"), "A word to colleagues.");

        assertThat(Check.of(ContentFiles.in(folder)).problems().stream().map(p -> p.code() + " " + p.file()))
                .containsExactly(
                        "C007 content/goat/terms.yaml.txt",
                        "C007 content/goat/terms.yml",
                        "C001 content/kid/close.yaml",
                        "C001 content/kid/link.yaml");
    }

    @Test
    void other_ends_of_lines_and_a_mark_at_the_beginning_are_no_fault() {
        Map<String, byte[]> other = new TreeMap<>();
        for (String path : college.files().paths()) {
            other.put(path, ("\uFEFF" + college.text(path).replace("\n", "\r\n")).getBytes(StandardCharsets.UTF_8));
        }
        Check check = Check.of(ContentFiles.of(other));
        assertThat(check.problems()).as(CheckText.of(check)).isEmpty();
    }

    @Test
    void a_sign_that_cannot_be_shown_leaves_the_line_within_its_width() {
        byte[] wide = college.text("content/kid/back.yaml").getBytes(StandardCharsets.UTF_16);
        Map<String, byte[]> files = new TreeMap<>();
        college.files()
                .paths()
                .forEach(path -> files.put(path, college.text(path).getBytes(StandardCharsets.UTF_8)));
        files.put("content/kid/back.yaml", wide);
        String told = CheckText.of(Check.of(ContentFiles.of(files)));
        assertThat(told).contains("This file is not written in UTF-8.").doesNotContain("\u0000");
        assertThat(told.lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void a_line_that_has_room_is_shown_from_its_beginning() {
        String told = CheckText.of(college.holding(BONES, college.text(BONES).replace("uberon,source", "uberon,sauce"))
                .check());
        assertThat(told).contains("\n      id,name_en,name_la,side,region,uberon,sauce\n");
    }

    private static void isTold(SmallCollege spoiled, String code, String file, String headline) {
        Check check = spoiled.check();
        assertThat(Stream.of(check.problems()).flatMap(List::stream))
                .as(CheckText.of(check))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.code()).isEqualTo(code);
                    assertThat(problem.file()).isEqualTo(file);
                    assertThat(problem.headline()).isEqualTo(headline);
                });
    }
}
