package rindward.controller.desk;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Collection;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import rindward.controller.lot.Session;
import rindward.controller.tasting.design.Sheet;

/**
 * The secret by which a taster scores without an account. It is made from the session's seed, which
 * nobody but the journal knows, and so is kept nowhere: a session that was planned by a command has
 * links as well, and a plan that is taken back ends its links.
 */
final class TasterLinks {
  /** Whoever guesses must hit one of 2 to the power of 128. */
  private static final int BYTES = 16;

  private static final String HASH = "HmacSHA256";

  private TasterLinks() {}

  /** What a link opens. */
  record Opened(Session session, Sheet sheet) {}

  /** Returns the secret of one taster of a session. */
  static String secret(Session session, String taster) {
    String key = session.planned().key();
    byte[] seed =
        key == null
            ? ByteBuffer.allocate(Long.BYTES).putLong(session.planned().seed()).array()
            : key.getBytes(StandardCharsets.UTF_8);
    try {
      Mac mac = Mac.getInstance(HASH);
      mac.init(new SecretKeySpec(seed, HASH));
      mac.update(session.name().getBytes(StandardCharsets.UTF_8));
      mac.update((byte) 0);
      byte[] hash = mac.doFinal(taster.getBytes(StandardCharsets.UTF_8));
      return Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOf(hash, BYTES));
    } catch (NoSuchAlgorithmException | InvalidKeyException e) {
      throw new IllegalStateException("this Java lacks " + HASH + ", which every Java has", e);
    }
  }

  /** Returns what a secret opens, without telling how far a wrong one was right. */
  static Optional<Opened> open(Collection<Session> sessions, String secret) {
    byte[] asked = secret.getBytes(StandardCharsets.UTF_8);
    Optional<Opened> opened = Optional.empty();
    for (Session session : sessions) {
      for (Sheet sheet : session.plan().sheets()) {
        byte[] own = secret(session, sheet.panelist()).getBytes(StandardCharsets.UTF_8);
        if (MessageDigest.isEqual(own, asked)) {
          opened = Optional.of(new Opened(session, sheet));
        }
      }
    }
    return opened;
  }
}
