package rindward.hardware.linux;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder of plain files that stands in for {@code /sys}. */
final class FakeSysfs {
  private final Path root;

  FakeSysfs(Path root) {
    this.root = root;
  }

  Path root() {
    return root;
  }

  /** Writes a file, with the folders it lies in. */
  FakeSysfs with(String file, String text) {
    try {
      Path path = root.resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, text);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Removes a file or an empty folder. */
  FakeSysfs without(String file) {
    try {
      Files.delete(root.resolve(file));
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Makes {@code link} point to {@code target}, as sysfs does from a class to the devices. */
  FakeSysfs linking(String link, String target) {
    try {
      Path path = root.resolve(link);
      Files.createDirectories(path.getParent());
      Files.createSymbolicLink(path, root.resolve(target));
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
