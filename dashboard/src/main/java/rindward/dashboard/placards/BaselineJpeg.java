package rindward.dashboard.placards;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Unpacks a JPEG picture (ITU-T T.81) of which it is known beforehand that it costs little: so many
 * pixels, gone through once. A file that is written in passes can be short and yet cost seconds,
 * for each pass goes through all pixels anew.
 */
final class BaselineJpeg {
  private static final int MOST_PIXELS = 1_000_000;

  /** One for all colours together, or one each. */
  private static final int MOST_SCANS = 4;

  private static final int MARKER = 0xFF;
  private static final int BASELINE = 0xC0;
  private static final int EXTENDED_SEQUENTIAL = 0xC1;
  private static final int LAST_FRAME = 0xCF;
  private static final int HUFFMAN_TABLES = 0xC4;
  private static final int RESERVED = 0xC8;
  private static final int ARITHMETIC_TABLES = 0xCC;
  private static final int SCAN = 0xDA;

  private BaselineJpeg() {}

  /**
   * Returns the picture.
   *
   * @throws IllegalArgumentException in a sentence, when it is none that may be unpacked
   */
  static BufferedImage unpack(byte[] jpeg) {
    refusePasses(jpeg);
    ImageReader decoder = ImageIO.getImageReadersByFormatName("jpeg").next();
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(jpeg))) {
      decoder.setInput(in, true, true);
      if ((long) decoder.getWidth(0) * decoder.getHeight(0) > MOST_PIXELS) {
        throw new IllegalArgumentException(
            "jpeg was a picture of %d by %d pixels but it must have at most %d in all."
                .formatted(decoder.getWidth(0), decoder.getHeight(0), MOST_PIXELS));
      }
      return decoder.read(0);
    } catch (IOException e) {
      throw new IllegalArgumentException("jpeg was no JPEG picture but it must be one.", e);
    } finally {
      decoder.dispose();
    }
  }

  /** Looks at every marker that may be one, also inside of other segments: rather one too many. */
  private static void refusePasses(byte[] jpeg) {
    int scans = 0;
    for (int at = 0; at + 1 < jpeg.length; at++) {
      if ((jpeg[at] & MARKER) == MARKER) {
        int code = jpeg[at + 1] & MARKER;
        scans += code == SCAN ? 1 : 0;
        if (scans > MOST_SCANS || isFrameInPasses(code)) {
          throw new IllegalArgumentException(
              "jpeg was written in several passes but it must be baseline JPEG, of at most %d scans."
                  .formatted(MOST_SCANS));
        }
      }
    }
  }

  private static boolean isFrameInPasses(int code) {
    return code >= BASELINE
        && code <= LAST_FRAME
        && code != BASELINE
        && code != EXTENDED_SEQUENTIAL
        && code != HUFFMAN_TABLES
        && code != RESERVED
        && code != ARITHMETIC_TABLES;
  }
}
