package ribmark.proof;

import java.nio.file.Path;
import java.util.Optional;
import ribmark.contentfiles.ContentFiles;
import ribmark.curriculum.Curriculum;

/**
 * The content the program works with, and what was found when it was read. A college's own files that are not sound are not
 * taken: then the content that came with the program is in use, and the check says why.
 */
public record ContentInUse(Curriculum curriculum, Check check) {

    /** Reads the college's own folder over ours, if it has one. */
    public static ContentInUse read(Optional<Path> own) {
        return own.map(ContentInUse::over).orElse(Ours.READ);
    }

    /** The same with files of an invented college between ours and the college's own. */
    public static ContentInUse read(ContentFiles invented, Optional<Path> own) {
        ContentFiles files = ContentFiles.ours().under(invented);
        return of(own.map(folder -> files.under(ContentFiles.in(folder))).orElse(files));
    }

    private static ContentInUse over(Path own) {
        return of(ContentFiles.ours().under(ContentFiles.in(own)));
    }

    private static ContentInUse of(ContentFiles files) {
        Check check = Check.of(files);
        return new ContentInUse(check.curriculum().orElse(Ours.READ.curriculum()), check);
    }

    /** What came with the program cannot change while it runs, so it is read once. */
    private static final class Ours {
        private static final ContentInUse READ = read();

        private static ContentInUse read() {
            Check check = Check.of(ContentFiles.ours());
            return new ContentInUse(check.curriculum().orElseThrow(), check);
        }
    }
}
