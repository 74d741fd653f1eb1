package rindward.dashboard.shed;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** What the shed hands over as files. Called from any web thread. */
public interface RecordDesk {

  /** Returns what there is. */
  RecordView record();

  /** Returns everything said of the lots, as a file of lots. */
  String lots();

  /**
   * Returns the newest copy of everything, for the caller to close; nothing while there is none.
   *
   * @throws IOException when it cannot be read
   */
  Optional<InputStream> copy() throws IOException;
}
