package rindward.dashboard;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** A client of the live stream on a bare socket, so that a test can read it, or refuse to. */
final class OpenStream implements AutoCloseable {

  private static final String HERE = "127.0.0.1";

  private final Socket socket;
  private final List<String> lines = new CopyOnWriteArrayList<>();
  private volatile boolean ended;

  private OpenStream(String from, int port, int receiveBufferBytes, String headers) {
    try {
      socket = new Socket();
      socket.bind(new InetSocketAddress(from, 0));
      socket.setReceiveBufferSize(receiveBufferBytes);
      socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
      socket
          .getOutputStream()
          .write(
              ("GET /api/live HTTP/1.1\r\nHost: localhost\r\n" + headers + "\r\n")
                  .getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Opens a stream and collects what arrives. */
  static OpenStream reading(int port) {
    return reading(HERE, port, "");
  }

  /** The same from another address of this machine, as 127.0.0.2. */
  static OpenStream from(String address, int port) {
    return reading(address, port, "");
  }

  /** Opens a stream as a page does that lost it after the event of that id. */
  static OpenStream resuming(int port, String lastEventId) {
    return reading(HERE, port, "Last-Event-ID: " + lastEventId + "\r\n");
  }

  private static OpenStream reading(String from, int port, String headers) {
    OpenStream stream = new OpenStream(from, port, 64 * 1024, headers);
    Thread reader = new Thread(stream::read, "stream-reader");
    reader.setDaemon(true);
    reader.start();
    return stream;
  }

  /** Opens a stream and takes nothing from it, as a phone does that lost its network. */
  static OpenStream deaf(int port) {
    return new OpenStream(HERE, port, 1024, "");
  }

  /** Returns every line so far, headers and chunk sizes among them. */
  List<String> lines() {
    return lines;
  }

  boolean ended() {
    return ended;
  }

  private void read() {
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        lines.add(line);
      }
    } catch (IOException closed) {
      // The end of the stream, whichever side made it.
    }
    ended = true;
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
