package rindward.controller.settings;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.settings.PageSetting.TlsSetting;

/** Reads where the page listens, how it is called and who may read it. */
final class PageReader {
  private static final Kind<List<String>> NAMES =
      Kind.patterns(
          "[A-Za-z0-9]([A-Za-z0-9.:-]{0,251}[A-Za-z0-9])?",
          "be a list of names or addresses without a port, for example [\"shed.farm.example\"]");

  private PageReader() {}

  /**
   * Reads the table.
   *
   * @param file the settings file, beside which certificate and key lie
   */
  static PageSetting read(TableReader table, Path file) {
    String address = table.optional("address", Kind.TEXT, "127.0.0.1");
    int port = table.optional("port", Kind.whole(0, 65_535), 8420);
    List<String> names = table.optional("names", NAMES, List.of());
    boolean openReading = table.optional("open_reading", Kind.FLAG, true);
    @Nullable TlsSetting tls = TlsReader.read(table, file);
    table.rejectUnknown();
    return new PageSetting(address, port, names, openReading, tls);
  }
}
