package rindward.dashboard;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;

/** Somebody in the network who speaks over a bare socket, from an address of this machine. */
final class Stranger implements AutoCloseable {
  private static final int PATIENCE_MILLIS = 5_000;
  private static final int GLANCE_MILLIS = 1;
  private final Socket socket = new Socket();

  /**
   * @param from an address of this machine, as 127.0.0.2
   */
  Stranger(String from, int port) {
    try {
      socket.setReceiveBufferSize(1_024);
      socket.bind(new InetSocketAddress(from, 0));
      socket.connect(new InetSocketAddress("127.0.0.1", port));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Sends this; what the other side has hung up on goes nowhere. */
  void says(String text) {
    canSay(text);
  }

  /** Sends this and tells whether it went out: not so once the other side has refused the line. */
  boolean canSay(String text) {
    try {
      socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
      return true;
    } catch (IOException hungUp) {
      return false;
    }
  }

  /** Sends this and returns the beginning of the answer; empty if the other side hangs up. */
  String asks(String text) {
    says(text);
    try {
      socket.setSoTimeout(PATIENCE_MILLIS);
      byte[] answer = new byte[512];
      int length = socket.getInputStream().read(answer);
      return length < 0 ? "" : new String(answer, 0, length, StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      return "";
    }
  }

  /** Tells whether the other side has not hung up; takes what it said. */
  boolean isOpen() {
    try {
      socket.setSoTimeout(GLANCE_MILLIS);
      InputStream in = socket.getInputStream();
      while (in.read(new byte[4_096]) >= 0) {
        // Goes on until there is nothing more, or the end.
      }
      return false;
    } catch (SocketTimeoutException stillThere) {
      return true;
    } catch (IOException hungUp) {
      return false;
    }
  }

  @Override
  public void close() {
    try {
      socket.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
