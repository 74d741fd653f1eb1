package rindward.hardware.mqtt;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * How to reach the broker.
 *
 * @param uri {@code tcp://host:1883}, or {@code ssl://host:8883}
 * @param clientId unique at this broker
 * @param user name to sign in with; empty without
 * @param password empty without; never shown
 * @param root first levels of every topic of our own, for example {@code rindward/hollin-bank}
 * @param authority PEM file with the certificate of whoever vouches for the broker's; the machine's
 *     trusted roots without
 */
public record BrokerSettings(
    String uri,
    String clientId,
    String user,
    String password,
    String root,
    @Nullable Path authority) {

  /** A broker without TLS, or one that the machine's trusted roots vouch for. */
  public BrokerSettings(String uri, String clientId, String user, String password, String root) {
    this(uri, clientId, user, password, root, null);
  }

  public BrokerSettings {
    if (!uri.matches("(tcp|ssl)://[^/]+")) {
      throw new IllegalArgumentException(
          "broker was '" + uri + "' but it must be like tcp://host:1883 or ssl://host:8883");
    }
    Topics.check(root);
  }

  /** Returns the topic that says whether we are there: {@code online} or {@code offline}. */
  public String stateTopic() {
    return root + "/state";
  }

  String echoTopic() {
    return root + "/echo/" + clientId;
  }

  @Override
  public String toString() {
    return uri + " as " + clientId + (user.isEmpty() ? "" : ", user " + user + ", password ***");
  }
}
