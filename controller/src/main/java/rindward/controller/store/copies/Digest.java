package rindward.controller.store.copies;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** By which a copy is known again after it was taken elsewhere: its SHA-256. */
final class Digest {
  private Digest() {}

  /** Returns it as {@code sha256sum} prints it. */
  static String of(Path file) throws IOException {
    try (InputStream bytes = Files.newInputStream(file);
        DigestInputStream read =
            new DigestInputStream(bytes, MessageDigest.getInstance("SHA-256"))) {
      long unused = read.transferTo(OutputStream.nullOutputStream());
      return HexFormat.of().formatHex(read.getMessageDigest().digest());
    } catch (NoSuchAlgorithmException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }
}
