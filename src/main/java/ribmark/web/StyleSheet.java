package ribmark.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/** All styles as one file, put together from their parts in the order of their index. */
final class StyleSheet {

    private final String css;

    StyleSheet() {
        css = Arrays.stream(text("static/styles/index.txt").split("\\R"))
                .filter(name -> !name.isBlank())
                .map(name -> text("static/styles/" + name.strip()))
                .map(StyleSheet::withoutComments)
                .collect(Collectors.joining("\n"));
    }

    String css() {
        return css;
    }

    /** Changes when a style does, so that browsers may keep the file for a year. */
    String address() {
        return "/ribmark.css?v=" + Visitor.digest(css).substring(0, 10);
    }

    private static String withoutComments(String part) {
        return part.replaceAll("(?s)/\\*.*?\\*/", "")
                .replaceAll("(?m)^\\s+", "")
                .replaceAll("\\n{2,}", "\n")
                .strip();
    }

    static String text(String resource) {
        return new String(bytes(resource), StandardCharsets.UTF_8);
    }

    static byte[] bytes(String resource) {
        try (InputStream in = StyleSheet.class.getClassLoader().getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("Not in the program: " + resource);
            }
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
