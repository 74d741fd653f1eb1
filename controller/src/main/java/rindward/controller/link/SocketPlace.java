package rindward.controller.link;

import java.io.IOException;
import java.net.UnixDomainSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import rindward.controller.settings.OwnFile;

/**
 * Where control and page of one shed meet: beside the record, which both must know anyway. Whoever
 * may write in that folder may listen; nobody else.
 */
public record SocketPlace(Path path) {
  private static final Set<PosixFilePermission> OURS = PosixFilePermissions.fromString("rw-------");
  private static final Set<PosixFilePermission> THE_GROUPS =
      PosixFilePermissions.fromString("rw-rw----");

  /**
   * @param store the database of the shed
   */
  public static SocketPlace of(Path store) {
    return new SocketPlace(store.resolveSibling(store.getFileName() + ".socket"));
  }

  UnixDomainSocketAddress address() {
    return UnixDomainSocketAddress.of(path);
  }

  /** Takes away what a control that was killed has left; there is one at a time. */
  void clear() throws IOException {
    Files.deleteIfExists(path);
  }

  boolean isThere() {
    return Files.exists(path);
  }

  /** Lets in whoever may write in the folder, and nobody else, whatever the umask says. */
  void guard() throws IOException {
    Path folder = path.toAbsolutePath().getParent();
    boolean isShared = folder != null && OwnFile.isTheGroups(folder);
    Files.setPosixFilePermissions(path, isShared ? THE_GROUPS : OURS);
  }
}
