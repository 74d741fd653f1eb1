package rindward.controller.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** What this machine calls itself, by which phones may look for its page. */
final class MachineName {
  /** The kernel's own word; asking for it goes over no network. */
  private static final Path KERNEL = Path.of("/proc/sys/kernel/hostname");

  private MachineName() {}

  /** Returns the name, if the system tells it. */
  static Optional<String> read() {
    try {
      return Optional.of(Files.readString(KERNEL).strip()).filter(name -> !name.isEmpty());
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
