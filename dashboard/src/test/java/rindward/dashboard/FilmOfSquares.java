package rindward.dashboard;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.google.zxing.qrcode.QRCodeWriter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Optional;
import javax.imageio.ImageIO;

/** What a camera sees of squares that are held before it one after the other, and what they say. */
final class FilmOfSquares {
  private static final int WIDTH = 640;
  private static final int HEIGHT = 480;
  private static final int SIDE = 300;
  private static final int FRAMES_EACH = 20;

  private FilmOfSquares() {}

  /** Returns a film, of JPEG pictures one behind the other, of squares that say this. */
  static Path of(String... says) {
    try {
      Path film = Files.createTempFile("rindward-film", ".mjpeg");
      film.toFile().deleteOnExit();
      try (OutputStream out = Files.newOutputStream(film)) {
        for (String each : says) {
          BufferedImage seen = seen(each);
          for (int i = 0; i < FRAMES_EACH; i++) {
            ImageIO.write(seen, "jpeg", out);
          }
        }
      }
      return film;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Returns what the square in a picture says; empty if there is none.
   *
   * @param picture a data URL
   */
  static Optional<String> read(String picture) {
    try {
      byte[] png = Base64.getDecoder().decode(picture.substring(picture.indexOf(',') + 1));
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
      int width = image.getWidth();
      int[] pixels = image.getRGB(0, 0, width, image.getHeight(), null, 0, width);
      RGBLuminanceSource light = new RGBLuminanceSource(width, image.getHeight(), pixels);
      return Optional.of(
          new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(light))).getText());
    } catch (ReaderException noSquare) {
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BufferedImage seen(String says) {
    BufferedImage seen = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = seen.createGraphics();
    g.setColor(new Color(120, 112, 96));
    g.fillRect(0, 0, WIDTH, HEIGHT);
    g.rotate(Math.toRadians(6), WIDTH / 2.0, HEIGHT / 2.0);
    g.translate((WIDTH - SIDE) / 2, (HEIGHT - SIDE) / 2);
    g.drawImage(square(says), 0, 0, null);
    g.dispose();
    return seen;
  }

  private static BufferedImage square(String says) {
    try {
      BitMatrix bits = new QRCodeWriter().encode(says, BarcodeFormat.QR_CODE, SIDE, SIDE);
      BufferedImage square = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
      for (int y = 0; y < SIDE; y++) {
        for (int x = 0; x < SIDE; x++) {
          square.setRGB(x, y, bits.get(x, y) ? 0x302c28 : 0xd6cebe);
        }
      }
      return square;
    } catch (WriterException e) {
      throw new IllegalArgumentException(e);
    }
  }
}
