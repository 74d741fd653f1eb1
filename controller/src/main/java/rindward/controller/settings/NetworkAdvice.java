package rindward.controller.settings;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.notice.MailSettings.Security;
import rindward.controller.settings.Calls.MailSetting;
import rindward.controller.settings.PageSetting.TlsSetting;
import rindward.controller.settings.Settings.BrokerSetting;

/**
 * What a settings file lets strangers read or say: each in one sentence that names the key, what
 * was wrong and what would be right. Nothing of it keeps a shed from starting, for a network may
 * guard itself.
 */
public final class NetworkAdvice {
  private final List<String> advice = new ArrayList<>();

  private NetworkAdvice() {}

  /**
   * Returns one sentence for each thing; empty when there is nothing to say. Looks at the files
   * that hold secrets, never at what they say.
   */
  public static List<String> of(Settings settings) {
    NetworkAdvice of = new NetworkAdvice();
    of.page(settings.page());
    @Nullable BrokerSetting broker = settings.broker();
    if (broker != null) {
      of.broker(broker, settings.calls());
    }
    of.calls(settings.calls());
    return List.copyOf(of.advice);
  }

  private void page(PageSetting page) {
    @Nullable TlsSetting tls = page.tls();
    if (tls != null) {
      secret("dashboard.tls_key", tls.key());
    } else if (!isThisMachine(page.address())) {
      say(
          "dashboard.address",
          page.address(),
          "without tls_certificate and tls_key whoever is in the network may read passwords as they"
              + " are typed: it must have both, or be 127.0.0.1 behind something that speaks"
              + " HTTPS");
    }
  }

  private void broker(BrokerSetting broker, Calls calls) {
    URI address = URI.create(broker.uri());
    boolean isOpen = address.getScheme().equals("tcp") && !isThisMachine(host(address));
    if (isOpen && calls.takesCommands()) {
      say(
          "mqtt.commands",
          "true",
          "whoever is in the network may hold back or read what is said to the shed: broker.tls"
              + " must be true");
    }
    if (isOpen && broker.passwordFile() != null) {
      say(
          "broker.tls",
          "false",
          "the broker's password goes through the network as it is: it must be true");
    }
    if (broker.passwordFile() != null) {
      secret("broker.password_file", broker.passwordFile());
    }
  }

  private void calls(Calls calls) {
    @Nullable MailSetting mail = calls.mail();
    if (mail != null) {
      if (mail.security() == Security.NONE
          && mail.password() != null
          && !isThisMachine(mail.host())) {
        say(
            "mail.security",
            "none",
            "the password goes through the network as it is: it must be starttls or tls");
      }
      kept(mail.password());
    }
    kept(calls.webhook() == null ? null : calls.webhook().kept());
    kept(calls.alive() == null ? null : calls.alive().address().kept());
  }

  private void kept(@Nullable Secret secret) {
    if (secret != null && secret.file() != null) {
      secret(secret.key() + "_file", secret.file());
    }
  }

  private void secret(String key, Path file) {
    if (!Files.exists(file)) {
      say(key, file.toString(), "there must be such a file");
    } else if (isForOthers(file)) {
      say(
          key,
          file.toString(),
          "every user of this machine may read it: it must be for its owner and group only (chmod"
              + " o-rwx)");
    }
  }

  private static boolean isForOthers(Path file) {
    try {
      return Files.getPosixFilePermissions(file).contains(PosixFilePermission.OTHERS_READ);
    } catch (IOException | UnsupportedOperationException notToBeKnown) {
      return false;
    }
  }

  /** Asks nobody for a name: one that is not a figure and not this machine's is elsewhere. */
  private static boolean isThisMachine(String host) {
    try {
      return host.equals("localhost")
          || host.matches("[0-9.]+|.*:.*") && InetAddress.getByName(host).isLoopbackAddress();
    } catch (UnknownHostException e) {
      return false;
    }
  }

  private static String host(URI address) {
    String host = address.getHost();
    return host == null ? "" : host.replaceAll("^\\[|]$", "");
  }

  private void say(String key, String was, String right) {
    advice.add(key + " was '" + was + "' but " + right + ".");
  }
}
