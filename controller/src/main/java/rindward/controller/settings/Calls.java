package rindward.controller.settings;

import java.io.IOException;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rindward.controller.notice.EscalationLine;
import rindward.controller.notice.MailSettings;

/**
 * How the shed calls for help.
 *
 * @param line who is told what, in which order
 * @param page address of the dashboard as people reach it, for links; empty without
 * @param mail how mail goes out; null without
 * @param webhook where notices are posted; null without
 * @param alive whom to tell regularly that we live; null without
 * @param publishes whether the broker is told how the shed is
 * @param takesCommands whether signed commands are taken from the broker
 */
public record Calls(
    EscalationLine line,
    String page,
    @Nullable MailSetting mail,
    @Nullable Address webhook,
    @Nullable Alive alive,
    boolean publishes,
    boolean takesCommands) {

  /** Nobody is told. */
  static final Calls NONE =
      new Calls(
          new EscalationLine(List.of(), Duration.ofMinutes(10), Duration.ofMinutes(30)),
          "",
          null,
          null,
          null,
          false,
          false);

  /** Returns the address of the alarms' page; empty without. */
  public String alarmsPage() {
    return page.isEmpty() ? "" : page.replaceAll("/+$", "") + "/alarms";
  }

  /**
   * How mail goes out.
   *
   * @param password where it is kept; null without signing in
   * @param addresses a person's name to their address
   */
  public record MailSetting(
      String host,
      int port,
      MailSettings.Security security,
      String user,
      @Nullable Secret password,
      String from,
      Map<String, String> addresses) {
    /** Returns the same with the password read, for whoever sends. */
    public MailSettings open(Function<String, @Nullable String> environment) throws IOException {
      return new MailSettings(
          host,
          port,
          security,
          user,
          password == null ? "" : password.read(environment),
          from,
          addresses);
    }
  }

  /**
   * An address, which may be secret.
   *
   * @param plain as it stands in the settings; null where it is kept elsewhere
   */
  public record Address(@Nullable URI plain, @Nullable Secret kept) {
    /** Returns the address. */
    public URI open(Function<String, @Nullable String> environment) throws IOException {
      if (plain != null) {
        return plain;
      }
      if (kept == null) {
        throw new IllegalStateException("an address is neither given nor kept");
      }
      try {
        URI read = URI.create(kept.read(environment));
        if (CallsReader.isWeb(read)) {
          return read;
        }
      } catch (IllegalArgumentException e) {
        // Told below, without the address.
      }
      throw new IOException(kept.key() + " is kept elsewhere but it must begin with http");
    }
  }

  /** Whom to tell regularly that we live. */
  public record Alive(Address address, Duration every) {}
}
