package rindward.controller.settings;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the page listens, by which names it may be called, and who may read.
 *
 * @param address what it listens on: the address of one interface, or all of them
 * @param port TCP port; 0 for any free one
 * @param names by which phones may call it besides its own addresses and this machine's own name
 * @param openReading whether everybody who reaches it may read
 * @param tls what it needs to speak HTTPS; null for plain HTTP
 */
public record PageSetting(
    String address, int port, List<String> names, boolean openReading, @Nullable TlsSetting tls) {

  public PageSetting {
    names = List.copyOf(names);
  }

  /** What it shows phones so that they believe it; both are PEM files that could be read. */
  public record TlsSetting(Path certificate, Path key) {}

  /** Returns its address as a person types it on this machine. */
  public String url(int openPort) {
    return (tls == null ? "http" : "https") + "://" + address + ":" + openPort + "/";
  }
}
