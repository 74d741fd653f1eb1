package rindward.controller.tasting.design;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * Whole numbers drawn from a key that nobody guesses: the hash (SHA-256) of the key and a counter,
 * so that whoever sees all codes of a sheet learns nothing of the other sheets. Not thread-safe.
 */
final class HashStream {
  private static final String HASH = "SHA-256";

  private final byte[] key;
  private final MessageDigest digest;
  private long counter;
  private ByteBuffer block = ByteBuffer.allocate(0);

  HashStream(String key) {
    this.key = key.getBytes(StandardCharsets.UTF_8);
    try {
      this.digest = MessageDigest.getInstance(HASH);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("this Java lacks " + HASH + ", which every Java has", e);
    }
  }

  /** Returns a number from zero to below {@code bound}, all equally likely. */
  int below(int bound) {
    int fair = Integer.MAX_VALUE - Integer.MAX_VALUE % bound;
    int drawn = next();
    while (drawn >= fair) {
      drawn = next();
    }
    return drawn % bound;
  }

  private int next() {
    if (block.remaining() < Integer.BYTES) {
      digest.update(key);
      block = ByteBuffer.wrap(digest.digest(ByteBuffer.allocate(8).putLong(counter++).array()));
    }
    return block.getInt() & Integer.MAX_VALUE;
  }
}
