package rindward.dashboard.placards;

import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.ReaderException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.multi.qrcode.detector.MultiFinderPatternFinder;
import com.google.zxing.qrcode.decoder.Decoder;
import com.google.zxing.qrcode.detector.Detector;
import com.google.zxing.qrcode.detector.FinderPatternInfo;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Reads every square (QR code, ISO/IEC 18004) in black and white. A square is known by three corner
 * marks, so that every three of them may be one: a picture full of marks could be tried for ever,
 * and is given up.
 */
final class SquareFinder extends Detector {
  /** Of thirty squares. */
  private static final int MOST_MARKS = 100;

  private static final Map<DecodeHintType, ?> HARDER = Map.of(DecodeHintType.TRY_HARDER, true);

  private final BitMatrix picture;
  private final BooleanSupplier isOver;
  private final Decoder decoder = new Decoder();
  private int marks;

  /**
   * @param isOver tells when to stop with what has been read
   */
  SquareFinder(BitMatrix picture, BooleanSupplier isOver) {
    super(picture);
    this.picture = picture;
    this.isOver = isOver;
  }

  /**
   * Returns what the squares say, each once; nothing where there is none that can be read.
   *
   * @throws IllegalArgumentException in a sentence, when there is too much that may be one
   */
  Set<String> read() {
    Set<String> says = new LinkedHashSet<>();
    for (FinderPatternInfo corners : corners()) {
      if (isOver.getAsBoolean()) {
        if (says.isEmpty()) {
          throw tooMuch();
        }
        break;
      }
      try {
        says.add(decoder.decode(processFinderPatternInfo(corners).getBits(), HARDER).getText());
      } catch (ReaderException noSquare) {
        continue;
      }
    }
    return says;
  }

  private FinderPatternInfo[] corners() {
    try {
      return new MultiFinderPatternFinder(picture, mark -> count()).findMulti(HARDER);
    } catch (NotFoundException noSquare) {
      return new FinderPatternInfo[0];
    }
  }

  private void count() {
    marks++;
    if (marks > MOST_MARKS || isOver.getAsBoolean()) {
      throw tooMuch();
    }
  }

  private static IllegalArgumentException tooMuch() {
    return new IllegalArgumentException(
        "jpeg held too much that looks like a corner of a square; go closer, so that fewer are in"
            + " the picture.");
  }
}
