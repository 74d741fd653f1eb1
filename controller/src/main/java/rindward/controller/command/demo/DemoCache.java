package rindward.controller.command.demo;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Keeps the demo's history from one start to the next, in the user's cache folder. One file for one
 * build of the program; its name ends in the moment up to which it tells. May be deleted any time.
 */
final class DemoCache {
  /** An older history is made anew, so that what is missing since stays small. */
  private static final Duration LONGEST_GAP = Duration.ofHours(20);

  private static final String SUFFIX = ".db";

  private final Path folder;
  private final String prefix;

  /** A history that was found. */
  record Kept(Path file, Instant end) {}

  /** The cache of this build of the program. */
  DemoCache() {
    this(
        Path.of(
            Optional.ofNullable(System.getenv("XDG_CACHE_HOME"))
                .filter(set -> !set.isBlank())
                .orElse(System.getProperty("user.home") + "/.cache"),
            "rindward"),
        "demo-" + built() + "-");
  }

  DemoCache(Path folder, String prefix) {
    this.folder = folder;
    this.prefix = prefix;
  }

  /** Returns a history that reaches nearly to now. */
  Optional<Kept> find(Instant now) {
    return kept().stream()
        .filter(k -> !k.end().isAfter(now) && k.end().isAfter(now.minus(LONGEST_GAP)))
        .findFirst();
  }

  /**
   * Takes a history over in the place of what was kept.
   *
   * @throws IOException when the folder cannot be written
   */
  Kept keep(Path database, Instant end) throws IOException {
    Files.createDirectories(folder);
    for (Kept old : kept()) {
      Files.deleteIfExists(old.file());
    }
    Path file = folder.resolve(prefix + end.getEpochSecond() + SUFFIX);
    Files.copy(database, file, StandardCopyOption.REPLACE_EXISTING);
    return new Kept(file, end);
  }

  private List<Kept> kept() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.flatMap(file -> end(file).stream().map(end -> new Kept(file, end))).toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private Optional<Instant> end(Path file) {
    String name = file.getFileName() == null ? "" : file.getFileName().toString();
    if (!name.startsWith(prefix) || !name.endsWith(SUFFIX)) {
      return Optional.empty();
    }
    String digits = name.substring(prefix.length(), name.length() - SUFFIX.length());
    return digits.matches("\\d{1,12}")
        ? Optional.of(Instant.ofEpochSecond(Long.parseLong(digits)))
        : Optional.empty();
  }

  /** Tells one build from another by when its jar or classes were written. */
  private static long built() {
    try {
      Path code =
          Path.of(DemoCache.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return Files.getLastModifiedTime(code).to(java.util.concurrent.TimeUnit.SECONDS);
    } catch (IOException | URISyntaxException | RuntimeException e) {
      return 0;
    }
  }
}
