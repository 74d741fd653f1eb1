package rindward.controller.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Squares that a telephone reads. */
class SquareTest {
  private static final int PIXELS = 8;
  private static final Pattern MODULE = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z");

  @Test
  void anAddressOfTheShedFitsASmallSquareWithWhiteAroundIt() {
    Square square = Square.of("http://shed.local:8420/room/storage");
    // ISO/IEC 18004: 35 bytes at level Q fill version 4, which has 33 modules; four are white
    // around.
    assertThat(square.modules()).isEqualTo(33 + 8);
    assertThat(square.path()).startsWith("M4 4h1v1h-1z");
  }

  /** ZXing reads it, which is of another make than what draws it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "K4T",
        "http://shed.local:8420/room/storage",
        "https://hollin-bank.example/place/the%20north%20wall",
        "http://192.168.1.7:8420/taste/1f0c9a77d2b64e5c8f3a1d20b7c95e64"
      })
  void aSoiledLabelSeenAslantIsStillRead(String says) throws Exception {
    BufferedImage label = label(Square.of(says));
    int side = 480;
    BufferedImage seen = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = seen.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.setColor(new Color(120, 112, 96));
    g.fillRect(0, 0, side, side);
    g.translate(side / 2, side / 2);
    g.rotate(Math.toRadians(14));
    g.shear(0.12, 0);
    g.scale(320.0 / label.getWidth(), 290.0 / label.getHeight());
    g.drawImage(label, -label.getWidth() / 2, -label.getHeight() / 2, null);
    g.dispose();

    assertThat(read(seen)).isEqualTo(says);
  }

  /** Faded, and with a thumb of mud on it. */
  private static BufferedImage label(Square square) {
    int side = square.modules() * PIXELS;
    BufferedImage label = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = label.createGraphics();
    g.setColor(new Color(214, 206, 190));
    g.fillRect(0, 0, side, side);
    g.setColor(new Color(48, 44, 40));
    MODULE
        .matcher(square.path())
        .results()
        .forEach(
            at ->
                g.fillRect(
                    Integer.parseInt(at.group(1)) * PIXELS,
                    Integer.parseInt(at.group(2)) * PIXELS,
                    PIXELS,
                    PIXELS));
    g.setColor(new Color(90, 70, 50));
    g.fillOval(side / 2, side / 2, 3 * PIXELS, 3 * PIXELS);
    g.dispose();
    return label;
  }

  private static String read(BufferedImage image) throws ReaderException {
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    return new QRCodeReader()
        .decode(
            new BinaryBitmap(
                new HybridBinarizer(
                    new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels))),
            Map.of(DecodeHintType.TRY_HARDER, true))
        .getText();
  }

  @Test
  void theImageIsBlackOnWhiteWhateverThePageIs() {
    assertThat(Square.of("K4T").svg())
        .startsWith("<svg xmlns=")
        .contains("<path fill=\"#fff\" d=\"M0 0H29V29H0z\"/>")
        .doesNotContain("style=");
  }
}
