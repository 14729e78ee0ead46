package ribmark.blocksheet;

import java.util.Arrays;
import java.util.Optional;
import ribmark.competence.Mark;

/** The four marks by the codes that forms and tables hold. */
final class MarkCodes {

    private MarkCodes() {}

    static Optional<Mark> of(String code) {
        return Arrays.stream(Mark.values())
                .filter(mark -> mark.code().equals(code))
                .findFirst();
    }
}
