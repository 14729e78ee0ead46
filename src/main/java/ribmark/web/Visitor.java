package ribmark.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;

/** The one cookie, and the token that forms carry: derived from the cookie, so that only our own pages know it. */
public final class Visitor {

    private static final String NAME = "ribmark";
    private static final int BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Visitor() {}

    /** The cookie as sent, or as just given. */
    public static String cookie(Context ctx) {
        String given = ctx.attribute(NAME);
        String sent = given != null ? given : ctx.cookie(NAME);
        return sent != null ? sent : fresh(ctx);
    }

    /** Gives a new cookie, as at signing in and out, so that an old one is worth nothing. */
    public static String fresh(Context ctx) {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        String value = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        boolean secure = "https".equalsIgnoreCase(ctx.header("X-Forwarded-Proto")) || "https".equals(ctx.scheme());
        ctx.cookie(new Cookie(NAME, value, "/", -1, secure, true, null, SameSite.LAX));
        ctx.attribute(NAME, value);
        return value;
    }

    /** The token for this visitor's forms. */
    public static String token(Context ctx) {
        return digest("form token " + cookie(ctx));
    }

    /** Whether the form came from a page of ours that this visitor opened. */
    static boolean sentOurToken(Context ctx) {
        String sent = ctx.formParam("token");
        if (sent == null || ctx.cookie(NAME) == null) {
            return false;
        }
        return MessageDigest.isEqual(
                token(ctx).getBytes(StandardCharsets.UTF_8), sent.getBytes(StandardCharsets.UTF_8));
    }

    /** SHA-256 of a text, for looking something up without keeping it. */
    public static String digest(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(hash);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }
}
