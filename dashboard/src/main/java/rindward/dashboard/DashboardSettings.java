package rindward.dashboard;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the dashboard listens, and who may read.
 *
 * @param bindAddress address of one interface; {@code 127.0.0.1} shows it to this machine only
 * @param port TCP port, 0 to 65535; 0 takes any free one
 * @param names by which it may be called besides the address that is called and {@code localhost}
 * @param openReading whether everybody who reaches the address may read; a change always needs
 *     sign-in
 * @param identity by which the pages come over HTTPS, and over nothing else; null for plain HTTP
 */
public record DashboardSettings(
    String bindAddress,
    int port,
    List<String> names,
    boolean openReading,
    @Nullable ServerIdentity identity) {

  public static final String DEFAULT_BIND_ADDRESS = "127.0.0.1";
  public static final int DEFAULT_PORT = 8420;

  public DashboardSettings {
    names = List.copyOf(names);
    if (port < 0 || port > 65_535) {
      throw new IllegalArgumentException("port was '" + port + "' but it must be 0 to 65535");
    }
  }

  /** Settings for this machine only, whose users may read. */
  public static DashboardSettings onThisMachine(int port) {
    return new DashboardSettings(DEFAULT_BIND_ADDRESS, port, List.of(), true, null);
  }
}
