package rindward.controller.settings;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import rindward.controller.settings.PageSetting.TlsSetting;

/** Reads where certificate and key lie, and sees that somebody may read them; not what they say. */
final class TlsReader {
  private static final String CERTIFICATE = "tls_certificate";
  private static final String KEY = "tls_key";

  private TlsReader() {}

  /**
   * Returns both; null where neither is given.
   *
   * @param file the settings file, beside which they lie
   */
  static @Nullable TlsSetting read(TableReader dashboard, Path file) {
    Path certificate = file(dashboard, CERTIFICATE, file);
    Path key = file(dashboard, KEY, file);
    if (certificate == null && key != null) {
      dashboard.missing(CERTIFICATE, "it must be given where dashboard.tls_key is");
    }
    if (key == null && certificate != null) {
      dashboard.missing(KEY, "it must be given where dashboard.tls_certificate is");
    }
    return certificate == null || key == null ? null : new TlsSetting(certificate, key);
  }

  private static @Nullable Path file(TableReader dashboard, String name, Path file) {
    String given = dashboard.optional(name, Kind.TEXT, "");
    if (given.isEmpty()) {
      return null;
    }
    Path path = file.toAbsolutePath().resolveSibling(given);
    if (!Files.isRegularFile(path)) {
      dashboard.refuse(name, "there must be such a file: " + path);
    } else if (!Files.isReadable(path)) {
      dashboard.refuse(name, "whoever runs this must be allowed to read it: " + path);
    }
    return path;
  }
}
