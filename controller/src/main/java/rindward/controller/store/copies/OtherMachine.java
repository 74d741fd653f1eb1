package rindward.controller.store.copies;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * A folder on another machine, reached by the system's own {@code ssh}: the key, and whom it
 * trusts, are the business of whoever set that up, and nothing of it stands in our settings.
 * Nothing asks a question on the way.
 */
public final class OtherMachine implements SecondPlace {
  private static final Duration LONGEST = Duration.ofMinutes(30);
  private static final int SHA256_LETTERS = 64;
  private static final String UNFINISHED = ".part";
  private static final File NOTHING = new File("/dev/null");

  private final List<String> ssh;
  private final String host;
  private final String folder;
  private final CopyNames names;
  private final ZoneId zone;

  /**
   * @param host {@code user@machine}
   * @param folder as its shell takes it; must be there
   * @param database whose copies they are
   * @param zone whose nights and weeks are meant
   */
  public OtherMachine(String host, String folder, Path database, ZoneId zone) {
    this(
        List.of("ssh", "-o", "BatchMode=yes", "-o", "ConnectTimeout=20", "-T"),
        host,
        folder,
        database,
        zone);
  }

  OtherMachine(List<String> ssh, String host, String folder, Path database, ZoneId zone) {
    this.ssh = List.copyOf(ssh);
    this.host = host;
    this.folder = folder;
    this.names = new CopyNames(database.getFileName().toString());
    this.zone = zone;
  }

  @Override
  public void take(Path copy) throws IOException, InterruptedException {
    String name = copy.getFileName().toString();
    String part = quoted(name + UNFINISHED);
    String there =
        there("umask 077; cat > " + part + " && sync && sha256sum < " + part, copy).strip();
    if (there.length() < SHA256_LETTERS
        || !there.substring(0, SHA256_LETTERS).equals(Digest.of(copy))) {
      throw new IOException(
          "the copy in " + host + ":" + folder + " is not what was sent, read back there");
    }
    String unused = there("mv -f -- " + part + " " + quoted(name), null);
    List<String> present = there("ls -1", null).lines().toList();
    for (String old : names.notKept(present, zone)) {
      unused = there("rm -f -- " + quoted(old), null);
    }
  }

  /** Has a command done in the folder, and returns what it prints. */
  private String there(String command, @Nullable Path input)
      throws IOException, InterruptedException {
    List<String> line = new ArrayList<>(ssh);
    line.addAll(List.of("--", host, "cd -- " + quoted(folder) + " && " + command));
    Path said = Files.createTempFile("copy-elsewhere", ".txt");
    Process process =
        new ProcessBuilder(line)
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .redirectInput(input == null ? NOTHING : input.toFile())
            .start();
    try {
      if (!process.waitFor(LONGEST.toSeconds(), TimeUnit.SECONDS)) {
        throw new IOException(
            host + " did not take the copy within " + LONGEST.toMinutes() + " min");
      }
      String text = Files.readString(said);
      if (process.exitValue() != 0) {
        throw new IOException(
            host + ":" + folder + " could not take the copy: " + text.strip().replace('\n', ' '));
      }
      return text;
    } finally {
      process.destroyForcibly();
      Files.deleteIfExists(said);
    }
  }

  /** As a shell takes it, whatever stands in it. */
  private static String quoted(String word) {
    return "'" + word.replace("'", "'\\''") + "'";
  }
}
