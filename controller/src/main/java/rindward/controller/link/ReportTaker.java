package rindward.controller.link;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.SocketChannel;

/**
 * One listener of control, on control's side: takes one report at a time, and says nothing but
 * "look at the journal", a byte each time. For the socket's thread.
 */
final class ReportTaker {
  /** Whoever takes nothing for so long is gone, or worse. */
  private static final long PATIENCE_NANOS = 30_000_000_000L;

  /** Nobody has more to say in a second; what is more is no page of ours. */
  static final int MOST_BYTES_A_SECOND = 64;

  private static final long SECOND_NANOS = 1_000_000_000L;

  private final SocketChannel channel;
  private final SelectionKey key;
  private final ByteBuffer ear = ByteBuffer.allocate(2 * MOST_BYTES_A_SECOND);
  private ByteBuffer taking = ByteBuffer.allocate(0);
  private long tookNanos;
  private long heardSinceNanos;
  private int heard;
  private boolean isOver;

  ReportTaker(SocketChannel channel, SelectionKey key, long now) {
    this.channel = channel;
    this.key = key;
    this.tookNanos = now;
    this.heardSinceNanos = now;
  }

  /** Gives it a report, unless it has not taken the one before: then it skips this one. */
  void offer(ByteBuffer report, long now) {
    if (!taking.hasRemaining()) {
      taking = report;
      tookNanos = now;
      write();
    }
  }

  /** Writes what the system takes without waiting. */
  void write() {
    try {
      if (taking.hasRemaining()) {
        int unused = channel.write(taking);
      }
      if (key.isValid()) {
        key.interestOps(
            taking.hasRemaining()
                ? SelectionKey.OP_READ | SelectionKey.OP_WRITE
                : SelectionKey.OP_READ);
      }
    } catch (IOException gone) {
      end();
    }
  }

  /** Returns whether it has said something. */
  boolean hear(long now) {
    try {
      ear.clear();
      int bytes = channel.read(ear);
      if (bytes < 0) {
        end();
        return false;
      }
      if (now - heardSinceNanos > SECOND_NANOS) {
        heardSinceNanos = now;
        heard = 0;
      }
      heard += bytes;
      if (heard > MOST_BYTES_A_SECOND) {
        end();
      }
      return bytes > 0;
    } catch (IOException gone) {
      end();
      return false;
    }
  }

  /** Tells whether it has ended, or is given up now. */
  boolean isOver(long now) {
    if (taking.hasRemaining() && now - tookNanos > PATIENCE_NANOS) {
      end();
    }
    return isOver;
  }

  void end() {
    isOver = true;
    try {
      channel.close();
    } catch (IOException nothingToSave) {
      // It is gone either way.
    }
  }
}
