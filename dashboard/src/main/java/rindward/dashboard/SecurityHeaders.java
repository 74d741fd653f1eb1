package rindward.dashboard;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * What every response tells the browser not to do. Nothing inline runs but the index's import map,
 * which is known by its hash; one worker of our own keeps the site on the phone; nothing is fetched
 * from anywhere else; no other page may frame ours.
 */
final class SecurityHeaders {

  private static final int YEAR_SECONDS = 31_536_000;

  private final String contentSecurityPolicy;

  /**
   * @param importMap the text of the only inline script, exactly as served
   */
  SecurityHeaders(String importMap) {
    String hash = sha256(importMap.getBytes(StandardCharsets.UTF_8));
    contentSecurityPolicy =
        String.join(
            "; ",
            "default-src 'none'",
            "script-src 'self' 'sha256-" + hash + "'",
            "style-src 'self'",
            "img-src 'self'",
            "connect-src 'self'",
            "manifest-src 'self'",
            "worker-src 'self'",
            "base-uri 'none'",
            "form-action 'none'",
            "frame-ancestors 'none'",
            "require-trusted-types-for 'script'",
            "trusted-types lit-html own-script");
  }

  void set(Context ctx) {
    ctx.header("Content-Security-Policy", contentSecurityPolicy);
    ctx.header("X-Content-Type-Options", "nosniff");
    ctx.header("Referrer-Policy", "no-referrer");
    ctx.header("Cross-Origin-Opener-Policy", "same-origin");
    ctx.header("Cross-Origin-Resource-Policy", "same-origin");
    if (ctx.scheme().equals("https")) {
      ctx.header("Strict-Transport-Security", "max-age=" + YEAR_SECONDS);
    }
  }

  /** Returns the SHA-256 of the bytes in base64, as a policy writes it. */
  static String sha256(byte[] bytes) {
    try {
      return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }
}
