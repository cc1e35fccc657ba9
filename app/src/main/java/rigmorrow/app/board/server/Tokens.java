package rigmorrow.app.board.server;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import org.jspecify.annotations.Nullable;

/** Makes tokens, and tells a visitor who has the right one from others. */
public final class Tokens {
  private static final int TOKEN_BYTES = 24;
  private static final String COOKIE = "rigmorrow-board-";
  private static final String BEARER = "Bearer ";

  private final @Nullable String token;

  Tokens(@Nullable String token) {
    this.token = token;
  }

  /** A token that nobody can guess. */
  public static String made() {
    byte[] bytes = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** True when none is needed. */
  boolean none() {
    return token == null;
  }

  /** True when the visitor has the token, in a cookie or a header, or none is needed. */
  boolean has(Context context) {
    if (token == null) {
      return true;
    }
    String header = context.header("Authorization");
    return right(context.cookie(name(context)))
        || (header != null
            && header.startsWith(BEARER)
            && right(header.substring(BEARER.length())));
  }

  /** Compares in a time that tells nothing of where two tokens differ. */
  boolean right(@Nullable String given) {
    String wanted = token;
    return wanted != null
        && given != null
        && MessageDigest.isEqual(
            wanted.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8));
  }

  /** Gives the visitor the token to keep, out of reach of scripts and of other sites. */
  void give(Context context) {
    if (token != null) {
      context.cookie(new Cookie(name(context), token, "/", -1, false, true, null, SameSite.STRICT));
    }
  }

  /** Cookies know no ports: two boards on one machine must not take each other's. */
  private static String name(Context context) {
    return COOKIE + context.req().getLocalPort();
  }
}
