package rindward.hardware.linux;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Finds the folder of a device in sysfs. The kernel numbers devices in the order in which it meets
 * them, so a number may be another device's after the next start; what stays is its {@code name}
 * and where it hangs.
 */
final class SysfsDevice {
  private SysfsDevice() {}

  /**
   * Returns the one folder under {@code group} that {@code wanted} means: by its {@code name}
   * ("sht3x"), or by a part of its real path, as the place on a bus ("1-0044").
   *
   * @throws IOException when there is none, or more than one
   */
  static Path find(Path group, String wanted) throws IOException {
    List<Path> found = new ArrayList<>();
    List<String> present = new ArrayList<>();
    for (Path folder : folders(group)) {
      String name = name(folder);
      present.add(name + " (" + folder.toRealPath() + ")");
      if (name.equals(wanted) || hangsAt(folder, wanted)) {
        found.add(folder);
      }
    }
    if (found.size() == 1) {
      return found.get(0);
    }
    throw new IOException(
        "device was '"
            + wanted
            + "' but it must mean one device under "
            + group
            + ", by its name or its place as 1-0044; there "
            + (present.isEmpty() ? "is none" : "are " + String.join(", ", present)));
  }

  private static List<Path> folders(Path group) throws IOException {
    if (!Files.isDirectory(group)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(group)) {
      return all.filter(Files::isDirectory).sorted().toList();
    }
  }

  private static String name(Path folder) throws IOException {
    Path name = folder.resolve("name");
    return Files.exists(name) ? SysfsText.read(name) : "";
  }

  private static boolean hangsAt(Path folder, String wanted) throws IOException {
    for (Path part : folder.toRealPath()) {
      if (part.toString().equals(wanted)) {
        return true;
      }
    }
    return false;
  }
}
