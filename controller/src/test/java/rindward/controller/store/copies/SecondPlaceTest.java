package rindward.controller.store.copies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Copies on another disk and on another machine. The other machine is a shell of this one, which a
 * script in the place of {@code ssh} hands the command to as ssh does: as one word.
 */
class SecondPlaceTest {
  private static final Path DATABASE = Path.of("rindward.db");

  @TempDir private Path folder;
  private Path there;
  private Path copy;

  @BeforeEach
  void places() throws IOException {
    there = Files.createDirectory(folder.resolve("Wren's stick; rm -rf x"));
    copy = copy("rindward-20261125T030000Z.db");
  }

  @Test
  void anotherDisk_getsTheWholeCopy_forNobodyElseToRead() throws IOException {
    otherDisk().take(copy);

    Path taken = there.resolve(copy.getFileName());
    assertThat(taken).hasSameBinaryContentAs(copy);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(taken)))
        .isEqualTo("rw-------");
    assertThat(names()).containsExactly("rindward-20261125T030000Z.db");
  }

  @Test
  void anotherDisk_letsGoOfWhatIsNotKept_andOfNothingElse() throws IOException {
    Files.writeString(there.resolve("letters-20200101T030000Z.db"), "somebody else's");
    for (String name : nights(20)) {
      otherDisk().take(copy(name));
    }

    assertThat(names())
        .hasSize(7 + 3 + 1)
        .contains("letters-20200101T030000Z.db", nights(20).get(19));
  }

  @Test
  void aDiskThatIsNotPluggedIn_isToldAndNotWrittenBeside() {
    SecondPlace same = new OtherFolder(there, DATABASE, ZoneOffset.UTC, (a, b) -> true);
    SecondPlace missing = new OtherFolder(folder.resolve("none"), DATABASE, ZoneOffset.UTC);

    assertThatThrownBy(() -> same.take(copy))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("lies on the same disk as the record; is its own plugged in?");
    assertThatThrownBy(() -> missing.take(copy)).hasMessageContaining("is its disk plugged in?");
    assertThat(names()).isEmpty();
  }

  @Test
  void thisMachinesOwnDisk_isKnownToBeTheSame() {
    assertThatThrownBy(() -> new OtherFolder(there, DATABASE, ZoneOffset.UTC).take(copy))
        .hasMessageContaining("lies on the same disk as the record");
  }

  @Test
  void anotherMachine_getsTheWholeCopy_readBackThere() throws Exception {
    for (String name : nights(20)) {
      otherMachine("exec sh -c \"$last\"").take(copy(name));
    }

    assertThat(names())
        .hasSize(7 + 3)
        .contains(nights(20).get(19))
        .noneMatch(n -> n.endsWith("part"));
    assertThat(there.resolve(nights(20).get(19)))
        .hasSameBinaryContentAs(folder.resolve(nights(20).get(19)));
  }

  @Test
  void aCopyThatIsCutShortOnTheWay_getsNoName() throws IOException {
    SecondPlace cut = otherMachine("head -c 1000 | sh -c \"$last\"");

    assertThatThrownBy(() -> cut.take(copy))
        .isInstanceOf(IOException.class)
        .hasMessageEndingWith("is not what was sent, read back there");
    assertThat(names()).noneMatch(name -> name.endsWith(".db"));
  }

  @Test
  void aMachineThatDoesNotAnswer_isToldInOneSentence() throws IOException {
    SecondPlace away = otherMachine("echo 'ssh: connect: No route to host' >&2; exit 255");

    assertThatThrownBy(() -> away.take(copy))
        .isInstanceOf(IOException.class)
        .hasMessage(
            "shed@barn:" + there + " could not take the copy: ssh: connect: No route to host");
  }

  private OtherFolder otherDisk() {
    return new OtherFolder(there, DATABASE, ZoneOffset.UTC, (a, b) -> false);
  }

  private SecondPlace otherMachine(String behaves) throws IOException {
    Path ssh = folder.resolve("ssh");
    Files.writeString(ssh, "#!/bin/sh\nfor last; do :; done\n" + behaves + "\n");
    Files.setPosixFilePermissions(ssh, PosixFilePermissions.fromString("rwxr-xr-x"));
    return new OtherMachine(
        List.of(ssh.toString()), "shed@barn", there.toString(), DATABASE, ZoneOffset.UTC);
  }

  private Path copy(String name) throws IOException {
    return Files.writeString(folder.resolve(name), name + " ".repeat(50_000));
  }

  /** The copies of so many nights in a row, the oldest first. */
  private static List<String> nights(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(day -> String.format(Locale.ROOT, "rindward-202611%02dT030000Z.db", day))
        .toList();
  }

  private List<String> names() {
    try (Stream<Path> files = Files.list(there)) {
      return files.map(file -> file.getFileName().toString()).toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
