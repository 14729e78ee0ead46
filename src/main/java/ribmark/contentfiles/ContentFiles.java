package ribmark.contentfiles;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.Paths;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import ribmark.basics.Refused;

/** The files of a curriculum by their path, such as {@code content/lamb/legs.yaml}, wherever they lie. */
public final class ContentFiles {

    /** Schemas say how a file is written, not what is taught, so they always come from the program itself. */
    private static final String SCHEMAS = "content/schemas/";

    private static final List<String> FOLDERS = List.of("content", "assessments");

    /** What an author may have meant for content: another ending, one in capitals, or one that an editor added. */
    private static final Pattern MEANT = Pattern.compile(".*\\.(ya?ml|csv)(\\.txt)?", Pattern.CASE_INSENSITIVE);

    private final SortedMap<String, byte[]> files;
    private final SortedSet<String> strange;

    private ContentFiles(SortedMap<String, byte[]> files, SortedSet<String> strange) {
        this.files = files;
        this.strange = strange;
    }

    /** The files that travel with the program. */
    public static ContentFiles ours() {
        URL marker = ContentFiles.class.getResource("/content/sources.yaml");
        if (marker == null) {
            return of(Map.of());
        }
        try {
            return marker.getProtocol().equals("jar")
                    ? inJar(marker)
                    : in(Paths.get(marker.toURI()).getParent().getParent());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The files of a folder that holds {@code content/} and {@code assessments/}, or one of them. */
    public static ContentFiles in(Path folder) {
        if (FOLDERS.stream().noneMatch(name -> Files.isDirectory(folder.resolve(name)))) {
            throw new Refused(
                    Files.isDirectory(folder)
                            ? "The folder " + folder + " holds neither content/ nor assessments/."
                            : "There is no folder " + folder + ".");
        }
        ContentFiles found = of(Map.of());
        for (String name : FOLDERS) {
            found.collect(folder, folder.resolve(name));
        }
        return found;
    }

    /** These files, given as path and bytes. */
    public static ContentFiles of(Map<String, byte[]> files) {
        return new ContentFiles(new TreeMap<>(files), new TreeSet<>());
    }

    /** These files with a college's own laid over them: a file there replaces the one here. */
    public ContentFiles under(ContentFiles own) {
        SortedMap<String, byte[]> both = new TreeMap<>(files);
        both.putAll(own.files);
        SortedSet<String> allStrange = new TreeSet<>(strange);
        allStrange.addAll(own.strange);
        return new ContentFiles(both, allStrange);
    }

    /** The paths of all files, sorted. */
    public List<String> paths() {
        return List.copyOf(files.keySet());
    }

    /** What lies among the files, looks as if it were meant for one, and cannot be read as one. */
    List<String> strange() {
        return List.copyOf(strange);
    }

    /** What a file holds, or nothing when it is not there. */
    public Optional<byte[]> bytes(String path) {
        return Optional.ofNullable(files.get(path)).map(byte[]::clone);
    }

    /** The digest of all files: the same for the same files, whatever their order on the disk, the language or the zone. */
    public String version() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            files.forEach((path, bytes) -> {
                digest.update((path + "\0" + bytes.length + "\0").getBytes(StandardCharsets.UTF_8));
                digest.update(bytes);
            });
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Read as the archive it is: looking at it as a tree of folders takes several times as long. */
    private static ContentFiles inJar(URL marker) {
        SortedMap<String, byte[]> found = new TreeMap<>();
        try {
            JarURLConnection inside = (JarURLConnection) marker.openConnection();
            inside.setUseCaches(false);
            try (JarFile jar = inside.getJarFile()) {
                for (JarEntry entry : Collections.list(jar.entries())) {
                    if (isOurs(entry.getName()) && counts(entry.getName())) {
                        found.put(entry.getName(), jar.getInputStream(entry).readAllBytes());
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return of(found);
    }

    private static boolean isOurs(String path) {
        return FOLDERS.stream().anyMatch(folder -> path.startsWith(folder + "/"));
    }

    private void collect(Path root, Path folder) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> paths = Files.walk(folder)) {
            paths.forEach(path -> take(path, root.relativize(path).toString().replace('\\', '/')));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void take(Path path, String name) {
        if (counts(name) && Files.isRegularFile(path)) {
            try {
                files.put(name, Files.readAllBytes(path));
            } catch (IOException e) {
                strange.add(name);
            }
        } else if (MEANT.matcher(name).matches() && !name.startsWith(SCHEMAS) && !isHidden(path)) {
            strange.add(name);
        }
    }

    private static boolean isHidden(Path path) {
        return path.getFileName().toString().startsWith(".");
    }

    /** Whether a file of this path is content. */
    static boolean counts(String name) {
        return (name.endsWith(".yaml") || name.endsWith(".csv")) && !name.startsWith(SCHEMAS);
    }
}
