package rindward.controller.broadcast;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;

/**
 * How a word over the broker shows whose it is: by a keyed hash of its text, HMAC with SHA-256 as
 * RFC 2104 defines it, so that who reads it can neither change it nor make another. The key is the
 * SHA-256 of an API token; the token itself is never sent.
 *
 * @param key the public name of the token that it is signed with
 * @param word the word's own JSON, as text
 * @param proof the keyed hash of the word's UTF-8 bytes, 64 hexadecimal figures
 */
record SignedWord(@Nullable String key, @Nullable String word, @Nullable String proof) {
  private static final String ALGORITHM = "HmacSHA256";
  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** What came before words were signed: a token for everybody to read. */
  private record Unsigned(@Nullable String token) {}

  /**
   * Reads a message.
   *
   * @return nothing for what is none
   */
  static Optional<SignedWord> read(String text) {
    try {
      return Optional.ofNullable(JSON.readValue(text, SignedWord.class))
          .filter(read -> read.key != null && read.word != null && read.proof != null);
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
  }

  /** Tells whether a message carries the token itself, as it was done once. */
  static boolean isBareToken(String text) {
    try {
      Unsigned unsigned =
          JSON.readerFor(Unsigned.class)
              .without(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
              .readValue(text);
      return unsigned != null && unsigned.token != null;
    } catch (JsonProcessingException e) {
      return false;
    }
  }

  /** Tells whether whoever has the secret made this word as it is. */
  boolean isBy(byte[] secret) {
    byte[] expected = proof(secret, String.valueOf(word)).getBytes(StandardCharsets.US_ASCII);
    byte[] given = String.valueOf(proof).getBytes(StandardCharsets.UTF_8);
    return MessageDigest.isEqual(expected, given);
  }

  /** Returns the keyed hash of a text. */
  static String proof(byte[] secret, String text) {
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(new SecretKeySpec(secret, ALGORITHM));
      return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
    } catch (GeneralSecurityException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }
}
