package rindward.dashboard.placards;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Reads squares (QR code, ISO/IEC 18004) off what a telephone's camera sees. For any thread: one
 * picture at a time, so that many telephones need no more memory than one.
 */
final class SquareReader {
  private static final int MOST_PIXELS = 1_000_000;
  private static final Map<DecodeHintType, ?> HARDER = Map.of(DecodeHintType.TRY_HARDER, true);

  private final QRCodeMultiReader reader = new QRCodeMultiReader();

  /**
   * Returns what the squares in a picture say; nothing where there is none that can be read.
   *
   * @param jpeg a picture of at most {@value #MOST_PIXELS} pixels
   * @throws IllegalArgumentException in a sentence, when it is no such picture
   */
  synchronized List<String> read(byte[] jpeg) {
    BufferedImage picture = picture(jpeg);
    int width = picture.getWidth();
    int height = picture.getHeight();
    int[] pixels = picture.getRGB(0, 0, width, height, null, 0, width);
    RGBLuminanceSource light = new RGBLuminanceSource(width, height, pixels);
    try {
      Result[] found = reader.decodeMultiple(new BinaryBitmap(new HybridBinarizer(light)), HARDER);
      return Stream.of(found).map(Result::getText).distinct().toList();
    } catch (NotFoundException noSquare) {
      return List.of();
    }
  }

  private static BufferedImage picture(byte[] jpeg) {
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
}
