package rindward.controller.daemon;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.LockOut;
import rindward.controller.alarm.LockOuts;
import rindward.controller.settings.OwnFile;

/**
 * Where the code of a lock-out is read: a file on the board, where control keeps what is its own,
 * that only control's own user may read. It outlives restarts, and the record too: a lock-out is
 * not lifted by restoring an older copy. Never on the control thread, which must not wait for a
 * disk.
 */
final class LockOutFile {
  private static final Logger LOG = LoggerFactory.getLogger(LockOutFile.class);
  private static final int CODES = 1_000_000;
  private static final String HEAD =
      "# A heater did not stop when it was told to, and no room has heat. Switch off and lock its\n"
          + "# breaker; then reset its alarm with the code that stands here in front of it.\n";

  private final Path file;
  private final LockOuts lockOuts;
  private Map<AlarmId, LockOut> written;

  /** Reads what stands. */
  LockOutFile(Path file) {
    this.file = file;
    written = read(file);
    SecureRandom random = new SecureRandom();
    lockOuts =
        new LockOuts(written, () -> String.format(Locale.ROOT, "%06d", random.nextInt(CODES)));
  }

  LockOuts lockOuts() {
    return lockOuts;
  }

  /**
   * Writes what has changed since; what cannot be written stands in the log, and is tried again.
   */
  synchronized void keep() {
    Map<AlarmId, LockOut> now = lockOuts.all();
    if (now.equals(written)) {
      return;
    }
    now.forEach(
        (id, lock) -> {
          LockOut before = written.get(id);
          if (before == null || !before.code().equals(lock.code())) {
            LOG.warn("{} is locked out; its code is {}, as in {}.", id.key(), lock.code(), file);
          }
        });
    try {
      if (now.isEmpty()) {
        Files.deleteIfExists(file);
      } else {
        OwnFile.write(file, text(now));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(file + " cannot be written: " + e.getMessage(), e);
    }
    written = now;
  }

  private static String text(Map<AlarmId, LockOut> all) {
    StringBuilder text = new StringBuilder(HEAD);
    all.forEach(
        (id, lock) ->
            text.append(lock.code())
                .append(' ')
                .append(id.key())
                .append(" since ")
                .append(lock.since())
                .append(" wrong ")
                .append(lock.wrong())
                .append('\n'));
    return text.toString();
  }

  private static Map<AlarmId, LockOut> read(Path file) {
    Map<AlarmId, LockOut> all = new HashMap<>();
    try {
      for (String line : Files.readAllLines(file)) {
        if (!line.isBlank() && !line.startsWith("#")) {
          read(line, all);
        }
      }
    } catch (NoSuchFileException none) {
      return all;
    } catch (IOException e) {
      LOG.error("{} cannot be read: {}. What is locked out is told by the alarms.", file, e);
    }
    return all;
  }

  private static void read(String line, Map<AlarmId, LockOut> all) {
    try {
      String code = line.substring(0, line.indexOf(' '));
      String key = line.substring(code.length() + 1, line.indexOf(" since "));
      String[] rest = line.substring(line.indexOf(" since ") + 7).split(" wrong ", -1);
      Optional<AlarmId> id = AlarmId.of(key);
      LockOut lock = new LockOut(code, Instant.parse(rest[0]), Integer.parseInt(rest[1]));
      id.filter(LockOuts::isAbout).ifPresent(known -> all.put(known, lock));
    } catch (IndexOutOfBoundsException | IllegalArgumentException | DateTimeException e) {
      LOG.error("A line of the lock-outs says nothing and is passed over: {}", line);
    }
  }
}
