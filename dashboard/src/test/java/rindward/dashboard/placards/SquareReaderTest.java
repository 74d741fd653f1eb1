package rindward.dashboard.placards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.management.ThreadMXBean;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** What one picture may cost, and many. What is read off them, {@code SquaresTest} sees. */
class SquareReaderTest {
  private static final long MOST_BYTES = 16_000_000;

  @Test
  void aPictureOfAMillionPixelsTakesNoMoreThan16MB() throws Exception {
    byte[] jpeg = jpeg(noise(1000, 1000));
    SquareReader reader = new SquareReader(Duration.ofHours(1));
    tried(reader, jpeg); // What is loaded once is no picture's.
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();

    tried(reader, jpeg);

    assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(MOST_BYTES);
  }

  @Test
  void aPictureWhoseTimeIsOverIsGivenUpInASentence() throws Exception {
    byte[] jpeg = jpeg(noise(400, 400));
    assertThatThrownBy(() -> new SquareReader(Duration.ZERO).readNow(jpeg))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("jpeg held too much that looks like a corner of a square");
  }

  @Test
  void picturesBeyondThoseThatMayWaitAreRefusedAtOnce() throws Exception {
    SquareReader reader = new SquareReader();
    byte[] jpeg = jpeg(new BufferedImage(1000, 1000, BufferedImage.TYPE_BYTE_GRAY));
    List<CompletableFuture<List<String>>> answers = new ArrayList<>();
    assertThatThrownBy(
            () -> {
              for (int i = 0; i < 10_000; i++) {
                answers.add(reader.read(jpeg));
              }
            })
        .isInstanceOf(RejectedExecutionException.class);
    assertThat(answers).allSatisfy(answer -> assertThat(answer.join()).isEmpty());
  }

  private static void tried(SquareReader reader, byte[] jpeg) {
    try {
      reader.readNow(jpeg);
    } catch (IllegalArgumentException tooMuch) {
      assertThat(tooMuch).hasMessageContaining("too much");
    }
  }

  /** Returns a picture in which much looks like a corner mark: black and white of many widths. */
  private static BufferedImage noise(int width, int height) {
    RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = picture.createGraphics();
    for (int x = 0; x < width; x += 4) {
      for (int y = 0; y < height; y += 4) {
        g.setColor(random.nextBoolean() ? Color.WHITE : Color.BLACK);
        g.fillRect(x, y, 4, 4);
      }
    }
    g.dispose();
    return picture;
  }

  private static byte[] jpeg(BufferedImage picture) throws IOException {
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    ImageIO.write(picture, "jpeg", jpeg);
    return jpeg.toByteArray();
  }
}
