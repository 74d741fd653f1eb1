package rindward.dashboard;

import io.nayuki.qrcodegen.QrCode;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.plugins.jpeg.JPEGImageWriteParam;
import javax.imageio.stream.ImageOutputStream;

/**
 * What a camera sees of squares: faded, aslant, on a brown crate. They are drawn by the library
 * that draws the product's labels, which is of another make than what reads them.
 */
final class SeenSquares {
  private static final int WIDTH = 640;
  private static final int HEIGHT = 480;
  private static final int FRAMES_EACH = 20;

  private SeenSquares() {}

  /** Returns a film, of JPEG pictures one behind the other, of squares that say this in turn. */
  static Path film(String... says) {
    try {
      Path film = fresh(".mjpeg");
      try (OutputStream out = Files.newOutputStream(film)) {
        for (String each : says) {
          byte[] seen = jpeg(beside(each));
          for (int i = 0; i < FRAMES_EACH; i++) {
            out.write(seen);
          }
        }
      }
      return film;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns a file with one photograph. */
  static Path photograph(BufferedImage seen) {
    try {
      return Files.write(fresh(".jpg"), jpeg(seen));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns a view of squares that hang beside one another; of a bare wall for none. */
  static BufferedImage beside(String... says) {
    BufferedImage seen = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = seen.createGraphics();
    g.setColor(new Color(120, 112, 96));
    g.fillRect(0, 0, WIDTH, HEIGHT);
    g.rotate(Math.toRadians(6), WIDTH / 2.0, HEIGHT / 2.0);
    int room = WIDTH / Math.max(1, says.length);
    int side = Math.min(300, room * 4 / 5);
    for (int i = 0; i < says.length; i++) {
      Image label = label(says[i]).getScaledInstance(side, side, Image.SCALE_AREA_AVERAGING);
      g.drawImage(label, i * room + (room - side) / 2, (HEIGHT - side) / 2, null);
    }
    g.dispose();
    return seen;
  }

  static byte[] jpeg(BufferedImage seen) {
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    try {
      ImageIO.write(seen, "jpeg", jpeg);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return jpeg.toByteArray();
  }

  /** Returns a wall of so many corner marks a side (ISO/IEC 18004, 6.3.3), and of no square. */
  static BufferedImage cornerMarks(int aSide) {
    int module = 2;
    int pitch = 12 * module;
    BufferedImage wall =
        new BufferedImage(aSide * pitch, aSide * pitch, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = wall.createGraphics();
    for (int i = 0; i < aSide * aSide; i++) {
      int x = i % aSide * pitch + 2 * module;
      int y = i / aSide * pitch + 2 * module;
      for (int ring = 0; ring < 4; ring++) {
        int from = Math.max(0, ring - 1) * module;
        int side = new int[] {11, 7, 5, 3}[ring] * module;
        g.setColor(ring % 2 == 0 ? Color.WHITE : Color.BLACK);
        int at = ring == 0 ? -2 * module : from;
        g.fillRect(x + at, y + at, side, side);
      }
    }
    g.dispose();
    return wall;
  }

  /** Returns a JPEG that a decoder has to go through pass by pass. */
  static byte[] progressive(BufferedImage seen) {
    return jpeg(seen, how -> how.setProgressiveMode(ImageWriteParam.MODE_DEFAULT));
  }

  /** Returns a JPEG as small as it can be while black is still black. */
  static byte[] coarse(BufferedImage seen) {
    return jpeg(
        seen,
        how -> {
          how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
          how.setCompressionQuality(0.05f);
          ((JPEGImageWriteParam) how).setOptimizeHuffmanTables(true);
        });
  }

  private static byte[] jpeg(BufferedImage seen, Consumer<ImageWriteParam> set) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(jpeg)) {
      writer.setOutput(out);
      ImageWriteParam how = writer.getDefaultWriteParam();
      set.accept(how);
      writer.write(null, new IIOImage(seen, null, null), how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return jpeg.toByteArray();
  }

  /** Returns a JPEG that says so many times over that its picture begins. */
  static byte[] scannedAgain(byte[] jpeg, int times) {
    int scan = 0;
    while (jpeg[scan] != (byte) 0xFF || jpeg[scan + 1] != (byte) 0xDA) {
      scan++;
    }
    int length = 2 + (jpeg[scan + 2] << 8) + jpeg[scan + 3];
    ByteArrayOutputStream again = new ByteArrayOutputStream();
    again.write(jpeg, 0, scan);
    for (int i = 0; i < times; i++) {
      again.write(jpeg, scan, length);
    }
    again.write(jpeg, scan, jpeg.length - scan);
    return again.toByteArray();
  }

  private static BufferedImage label(String says) {
    QrCode code = QrCode.encodeText(says, QrCode.Ecc.QUARTILE);
    int module = 8;
    int quiet = 4;
    int side = (code.size + 2 * quiet) * module;
    BufferedImage label = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < side; y++) {
      for (int x = 0; x < side; x++) {
        boolean black = code.getModule(x / module - quiet, y / module - quiet);
        label.setRGB(x, y, black ? 0x302c28 : 0xd6cebe);
      }
    }
    return label;
  }

  private static Path fresh(String ending) throws IOException {
    Path file = Files.createTempFile("rindward-seen", ending);
    file.toFile().deleteOnExit();
    return file;
  }
}
