package rindward.hardware.mqtt;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManagerFactory;

/**
 * Trusts the brokers that a farm's own authority vouches for, and nobody else: a broker in the barn
 * has no certificate that the world knows.
 */
final class OwnAuthority {
  private OwnAuthority() {}

  /**
   * Returns what makes connections to such brokers.
   *
   * @param pem the authority's certificate, or several
   * @throws IOException when they cannot be read or used, in one sentence
   */
  static SSLSocketFactory trusting(Path pem) throws IOException {
    try (InputStream in = Files.newInputStream(pem)) {
      KeyStore trusted = KeyStore.getInstance(KeyStore.getDefaultType());
      trusted.load(null, null);
      int found = 0;
      for (Certificate one : CertificateFactory.getInstance("X.509").generateCertificates(in)) {
        trusted.setCertificateEntry("authority-" + ++found, one);
      }
      if (found == 0) {
        throw new IOException("ca_file was '" + pem + "' but there is no certificate in it");
      }
      TrustManagerFactory judges =
          TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
      judges.init(trusted);
      SSLContext context = SSLContext.getInstance("TLS");
      context.init(null, judges.getTrustManagers(), null);
      return context.getSocketFactory();
    } catch (NoSuchFileException e) {
      throw new IOException("ca_file was '" + pem + "' but there is no such file", e);
    } catch (GeneralSecurityException e) {
      throw new IOException(
          "ca_file was '" + pem + "' but it must be a certificate in PEM: " + e.getMessage(), e);
    }
  }
}
