package rindward.controller.store;

import java.nio.file.Path;
import java.time.Duration;
import java.util.OptionalLong;

/** The other process: appends entries and acknowledges each by a line with its id. */
final class JournalWriter {
  private JournalWriter() {}

  public static void main(String[] args) {
    try (Database database = new Database(Path.of(args[0]), Duration.ofSeconds(10))) {
      Journal journal = new Journal(database);
      for (int i = 0; i < Integer.parseInt(args[2]); i++) {
        AppendResult result =
            journal.append(args[1] + "-" + i, "lot-1", OptionalLong.empty(), 1_000, "Bea", "{}");
        System.out.println(((AppendResult.Appended) result).entry().id());
      }
    }
  }
}
