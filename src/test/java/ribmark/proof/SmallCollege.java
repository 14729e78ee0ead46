package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import ribmark.contentfiles.ContentFiles;

/** A whole curriculum on an invented animal of a few bones, to be spoiled one word at a time. */
final class SmallCollege {

    private final Map<String, byte[]> files = new TreeMap<>();

    private SmallCollege(ContentFiles sound) {
        sound.paths().forEach(path -> files.put(path, sound.bytes(path).orElseThrow()));
    }

    static SmallCollege sound() {
        return new SmallCollege(ContentFiles.in(Path.of("src/test/resources/small-college")));
    }

    /** The same with one text in one file exchanged; the text must be there. */
    SmallCollege with(String file, String good, String bad) {
        String before = text(file);
        assertThat(before).as(file).contains(good);
        int at = before.indexOf(good);
        return holding(file, before.substring(0, at) + bad + before.substring(at + good.length()));
    }

    SmallCollege holding(String file, String text) {
        files.put(file, text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    SmallCollege without(String file) {
        files.remove(file);
        return this;
    }

    String text(String file) {
        return new String(files.get(file), StandardCharsets.UTF_8);
    }

    ContentFiles files() {
        return ContentFiles.of(files);
    }

    Check check() {
        return Check.of(files());
    }

    void writeTo(Path folder) {
        files.forEach((path, bytes) -> {
            try {
                Files.createDirectories(folder.resolve(path).getParent());
                Files.write(folder.resolve(path), bytes);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
