package rindward.controller.notice;

import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.SendFailedException;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.util.Properties;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLSocketFactory;

/** Sends a notice as plain text mail. Certificates are checked, name included. */
public final class MailChannel implements Channel {
  private static final String PATIENCE_MILLIS = "10000";

  private final String name;
  private final MailSettings settings;
  private final Session session;

  public MailChannel(String name, MailSettings settings) {
    this(name, settings, (SSLSocketFactory) SSLSocketFactory.getDefault());
  }

  /** As above, trusting whom {@code sockets} trusts. */
  MailChannel(String name, MailSettings settings, SSLSocketFactory sockets) {
    this.name = name;
    this.settings = settings;
    session = Session.getInstance(properties(settings, sockets));
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public void send(Notice notice) throws IOException {
    String address = settings.addresses().get(notice.person());
    if (address == null) {
      throw new IOException("there is no address for " + notice.person());
    }
    try (Transport transport = session.getTransport()) {
      MimeMessage message = new MimeMessage(session);
      message.setFrom(new InternetAddress(settings.from()));
      message.setRecipient(Message.RecipientType.TO, new InternetAddress(address));
      message.setSubject(notice.subject(), "UTF-8");
      message.setText(notice.text(), "UTF-8");
      message.saveChanges();
      if (settings.user().isEmpty()) {
        transport.connect();
      } else {
        transport.connect(settings.user(), settings.password());
      }
      transport.sendMessage(message, message.getAllRecipients());
    } catch (AuthenticationFailedException e) {
      throw new IOException(
          settings.host() + " refuses user '" + settings.user() + "'; check user and password", e);
    } catch (SendFailedException e) {
      throw new IOException(settings.host() + " does not take mail for " + address, e);
    } catch (MessagingException e) {
      String why =
          e.getCause() instanceof SSLException untrusted
              ? "its certificate is not trusted: " + untrusted.getMessage()
              : e.getMessage();
      throw new IOException(
          settings.host() + ":" + settings.port() + " could not be used: " + why, e);
    }
  }

  private static Properties properties(MailSettings settings, SSLSocketFactory sockets) {
    boolean isTls = settings.security() == MailSettings.Security.TLS;
    String protocol = isTls ? "smtps" : "smtp";
    String prefix = "mail." + protocol + ".";
    Properties properties = new Properties();
    properties.setProperty("mail.transport.protocol", protocol);
    properties.setProperty(prefix + "host", settings.host());
    properties.setProperty(prefix + "port", Integer.toString(settings.port()));
    properties.setProperty(prefix + "auth", Boolean.toString(!settings.user().isEmpty()));
    properties.setProperty(prefix + "connectiontimeout", PATIENCE_MILLIS);
    properties.setProperty(prefix + "timeout", PATIENCE_MILLIS);
    properties.setProperty(prefix + "writetimeout", PATIENCE_MILLIS);
    properties.setProperty(prefix + "ssl.checkserveridentity", "true");
    properties.put(prefix + "ssl.socketFactory", sockets);
    if (settings.security() == MailSettings.Security.STARTTLS) {
      properties.setProperty(prefix + "starttls.enable", "true");
      properties.setProperty(prefix + "starttls.required", "true");
    }
    return properties;
  }
}
