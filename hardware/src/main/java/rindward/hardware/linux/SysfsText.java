package rindward.hardware.linux;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Reads the small files in which the kernel answers. Reading one may start a measurement and block
 * until it is done.
 */
final class SysfsText {
  private SysfsText() {}

  /**
   * Returns the text of a file without the blanks around it.
   *
   * @throws IOException when there is no such file, it may not be read, or the kernel answers with
   *     an error instead, as it does when the sensor is silent
   */
  static String read(Path file) throws IOException {
    try {
      // Latin 1 takes any byte, so nonsense is reported as what it is.
      return Files.readString(file, StandardCharsets.ISO_8859_1).strip();
    } catch (NoSuchFileException e) {
      throw new IOException("there is no file " + file, e);
    } catch (AccessDeniedException e) {
      throw new IOException("the file " + file + " may not be read by this user", e);
    } catch (IOException e) {
      throw new IOException("the kernel could not read it (" + e.getMessage() + ")", e);
    }
  }

  /**
   * Returns the number in a file.
   *
   * @throws IOException as {@link #read(Path)}, and when it holds something else
   */
  static double number(Path file) throws IOException {
    String text = read(file);
    try {
      double number = Double.parseDouble(text);
      if (Double.isFinite(number)) {
        return number;
      }
    } catch (NumberFormatException e) {
      // Told below, like a number that is not finite.
    }
    throw new IOException(file + " was '" + text + "' but it must be a number");
  }
}
