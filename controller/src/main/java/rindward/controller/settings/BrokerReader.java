package rindward.controller.settings;

import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rindward.controller.settings.Settings.BrokerSetting;

/** Reads how to reach the broker. */
final class BrokerReader {
  private static final int PLAIN_PORT = 1883;
  private static final int TLS_PORT = 8883;

  private static final Kind<String> HOST =
      Kind.pattern("[^/\\s:]{1,253}", "be the name or address of a machine, as \"192.168.1.20\"");

  private BrokerReader() {}

  /**
   * Reads the table.
   *
   * @param file the settings file, beside which the password's file is looked for
   * @param siteName gives the first levels of our own topics
   */
  static BrokerSetting read(TableReader table, Path file, String siteName) {
    String host = table.required("host", HOST);
    boolean isTls = table.optional("tls", Kind.FLAG, false);
    int port = table.optional("port", Kind.whole(1, 65_535), isTls ? TLS_PORT : PLAIN_PORT);
    String user = table.optional("user", Kind.TEXT, "");
    @Nullable Path password =
        table
            .find("password_file", Kind.TEXT)
            .map(name -> file.toAbsolutePath().resolveSibling(name))
            .orElse(null);
    if (password != null && user.isEmpty()) {
      table.missing("user", "it must be there where a password is");
    }
    @Nullable Path authority =
        table
            .find("ca_file", Kind.TEXT)
            .map(name -> file.toAbsolutePath().resolveSibling(name))
            .orElse(null);
    if (authority != null && !isTls) {
      table.refuse("ca_file", "tls must be true where it is given");
    }
    table.rejectUnknown();
    return new BrokerSetting(
        (isTls ? "ssl://" : "tcp://") + host + ":" + port,
        user,
        password,
        topicWord(siteName),
        authority);
  }

  private static String topicWord(String siteName) {
    String word = siteName.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    return word.replaceAll("^-|-$", "");
  }
}
