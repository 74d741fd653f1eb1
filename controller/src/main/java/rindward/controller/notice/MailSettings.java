package rindward.controller.notice;

import java.util.Map;

/**
 * How mail is sent.
 *
 * @param security how the connection is protected
 * @param user name to sign in with; empty without
 * @param password empty without; never shown
 * @param from the sender's address
 * @param addresses a person's name to their address
 */
public record MailSettings(
    String host,
    int port,
    Security security,
    String user,
    String password,
    String from,
    Map<String, String> addresses) {
  public MailSettings {
    addresses = Map.copyOf(addresses);
  }

  /** How the connection to the mail server is protected. */
  public enum Security {
    /** Plain; only for a server on the same machine. */
    NONE,
    /** Begins plain and turns to TLS before signing in, or gives up. */
    STARTTLS,
    /** TLS from the first byte. */
    TLS
  }

  @Override
  public String toString() {
    return host + ":" + port + " " + security + (user.isEmpty() ? "" : ", password ***");
  }
}
