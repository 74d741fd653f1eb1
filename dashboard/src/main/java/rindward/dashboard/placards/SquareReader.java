package rindward.dashboard.placards;

import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.eclipse.jetty.util.NanoTime;

/**
 * Reads squares off what a telephone's camera sees, on a thread of its own: one picture at a time,
 * so that many telephones need no more memory than one (16 MB at most), each for so long and no
 * longer. Whoever asks waits without holding a thread, and is answered in any case: should a
 * picture hold the reader's thread all the same, then nothing but the reading of squares is lost.
 * For any thread.
 */
final class SquareReader {
  private static final Duration A_PICTURE = Duration.ofMillis(300);

  /** Sixteen pictures in a row may take as long. */
  private static final Duration AN_ANSWER = Duration.ofSeconds(6);

  private static final int MOST_WAITING = 16;
  private static final Duration IDLE = Duration.ofSeconds(10);

  private final Duration aPicture;
  private final ThreadPoolExecutor thread;

  SquareReader() {
    this(A_PICTURE);
  }

  /**
   * @param aPicture how long one picture may take
   */
  SquareReader(Duration aPicture) {
    this.aPicture = aPicture;
    thread =
        new ThreadPoolExecutor(
            1,
            1,
            IDLE.toMillis(),
            TimeUnit.MILLISECONDS,
            new ArrayBlockingQueue<>(MOST_WAITING),
            SquareReader::newThread);
    thread.allowCoreThreadTimeOut(true);
  }

  /**
   * Returns what the squares in a picture say; nothing where there is none that can be read. It
   * fails with an {@link IllegalArgumentException}, in a sentence, when it is no picture that can
   * be read, and with a {@link java.util.concurrent.TimeoutException} when no answer comes.
   *
   * @param jpeg a baseline JPEG picture of at most a million pixels
   * @throws RejectedExecutionException when too many pictures wait
   */
  CompletableFuture<List<String>> read(byte[] jpeg) {
    return CompletableFuture.supplyAsync(() -> readNow(jpeg), thread)
        .orTimeout(AN_ANSWER.toMillis(), TimeUnit.MILLISECONDS);
  }

  /** Reads on the thread that calls. */
  List<String> readNow(byte[] jpeg) {
    long start = NanoTime.now();
    BooleanSupplier isOver = () -> NanoTime.since(start) > aPicture.toNanos();
    return List.copyOf(new SquareFinder(blackAndWhite(BaselineJpeg.unpack(jpeg)), isOver).read());
  }

  private static BitMatrix blackAndWhite(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    int[] pixels = picture.getRGB(0, 0, width, height, null, 0, width);
    try {
      return new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)).getBlackMatrix();
    } catch (NotFoundException everyPictureHasIt) {
      throw new IllegalStateException(everyPictureHasIt);
    }
  }

  private static Thread newThread(Runnable work) {
    Thread thread = new Thread(work, "squares");
    thread.setDaemon(true);
    return thread;
  }
}
