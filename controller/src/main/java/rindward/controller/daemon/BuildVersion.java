package rindward.controller.daemon;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** Which program this is, for whoever has to say it when something is wrong. */
public final class BuildVersion {
  private BuildVersion() {}

  /** Returns version and commit, as the build wrote them down. */
  public static String told() {
    Properties built = new Properties();
    try (InputStream in = BuildVersion.class.getResourceAsStream("build.properties")) {
      if (in != null) {
        built.load(in);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return told(built.getProperty("version", ""), built.getProperty("commit", ""));
  }

  /** As above; each is empty where the build did not know it. */
  static String told(String version, String commit) {
    if (version.isEmpty()) {
      return "(not built by Maven)";
    }
    return commit.isEmpty() ? version + " (commit unknown)" : version + " (commit " + commit + ")";
  }
}
