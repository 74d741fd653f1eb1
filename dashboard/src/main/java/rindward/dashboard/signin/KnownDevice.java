package rindward.dashboard.signin;

import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;

/**
 * What tells a device on which somebody has signed in before from a stranger's: a word made from
 * the hash of the password, which never leaves the shed. It opens nothing; it only says whose
 * mistakes are counted with whose. Another password makes another word.
 */
final class KnownDevice {
  private static final String ALGORITHM = "HmacSHA256";

  private KnownDevice() {}

  static String of(Person person) {
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(new SecretKeySpec(utf8(person.passwordHash()), ALGORITHM));
      return Base64.getUrlEncoder()
          .withoutPadding()
          .encodeToString(mac.doFinal(utf8("device of " + person.name())));
    } catch (NoSuchAlgorithmException | InvalidKeyException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }

  static boolean isOf(Person person, @Nullable String shown) {
    return shown != null && Secrets.same(shown, of(person));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
