package rindward.controller.settings;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * A file that the program makes for itself: whoever started it may read and write it, and nobody
 * else, whatever the system would have given it. What hangs on the outputs, who may sign in, and
 * what was said of whom is no business of another user of the machine.
 */
public final class OwnFile {
  private static final Set<PosixFilePermission> OURS = PosixFilePermissions.fromString("rw-------");

  private static final Set<PosixFilePermission> THE_GROUPS =
      PosixFilePermissions.fromString("rw-rw----");

  private OwnFile() {}

  /**
   * Makes an empty file, or takes others' rights away from the one that is there.
   *
   * @throws IOException when it cannot be made; one that belongs to somebody else is left as it is
   */
  public static void make(Path file) throws IOException {
    make(file, OURS);
  }

  private static void make(Path file, Set<PosixFilePermission> rights) throws IOException {
    try {
      if (isPosix(file)) {
        Files.createFile(file, PosixFilePermissions.asFileAttribute(OURS));
      } else {
        Files.createFile(file);
      }
      if (!rights.equals(OURS)) {
        set(file, rights); // A umask takes away, and this is meant.
      }
    } catch (FileAlreadyExistsException e) {
      set(file, rights);
    }
  }

  /**
   * The same for what every process of the shed writes: where its folder may be written by a group,
   * that group may write the file too.
   *
   * @throws IOException when it cannot be made
   */
  public static void makeShared(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    make(file, folder != null && isPosix(file) && isTheGroups(folder) ? THE_GROUPS : OURS);
  }

  /** Tells whether a folder may be written by a group. */
  public static boolean isTheGroups(Path folder) throws IOException {
    return Files.getPosixFilePermissions(folder).contains(PosixFilePermission.GROUP_WRITE);
  }

  /** Writes a text in the place of what was there: after a power cut it is the one or the other. */
  public static void write(Path file, String text) throws IOException {
    Path unfinished = file.resolveSibling(file.getFileName() + ".part");
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    Files.deleteIfExists(unfinished);
    make(unfinished);
    Files.writeString(unfinished, text, StandardCharsets.UTF_8, StandardOpenOption.WRITE);
    try (FileChannel channel = FileChannel.open(unfinished, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
    Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
  }

  private static void set(Path file, Set<PosixFilePermission> rights) {
    try {
      if (isPosix(file) && !rights.equals(Files.getPosixFilePermissions(file))) {
        Files.setPosixFilePermissions(file, rights);
      }
    } catch (IOException notOurs) {
      // Only its owner may change this; whether the file can be used shows at its first use.
    }
  }

  private static boolean isPosix(Path file) {
    return file.getFileSystem().supportedFileAttributeViews().contains("posix");
  }
}
