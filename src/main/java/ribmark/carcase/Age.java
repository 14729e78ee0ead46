package ribmark.carcase;

import java.util.Arrays;
import java.util.Optional;

/** How old the animal was, as far as ticket and teeth say; the word lamb alone says nothing about it. */
public enum Age {
    UNDER("under-12-months", "under 12 months"),
    OVER("over-12-months", "over 12 months, or a grown front tooth through"),
    UNKNOWN("unknown", "not known");

    private final String code;
    private final String words;

    Age(String code, String words) {
        this.code = code;
        this.words = words;
    }

    /** The code that is kept. */
    public String code() {
        return code;
    }

    /** The words on the page. */
    public String words() {
        return words;
    }

    /** Whether the backbone may be sawn without anybody being asked; an age nobody knows counts as over. */
    public boolean isUnder() {
        return this == UNDER;
    }

    /** The age a code names, if it names one. */
    public static Optional<Age> of(String code) {
        return Arrays.stream(values()).filter(a -> a.code.equals(code)).findFirst();
    }
}
