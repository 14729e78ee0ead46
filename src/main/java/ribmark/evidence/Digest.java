package ribmark.evidence;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), as hexadecimal text. */
public final class Digest {

    /** What stands before the first record. */
    static final String NOTHING = "0".repeat(64);

    private Digest() {}

    /** The digest of a text, as 64 figures and letters. */
    public static String of(String text) {
        return HexFormat.of().formatHex(bytes(text.getBytes(StandardCharsets.UTF_8)));
    }

    static byte[] bytes(byte[]... parts) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                sha.update(part);
            }
            return sha.digest();
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }
}
