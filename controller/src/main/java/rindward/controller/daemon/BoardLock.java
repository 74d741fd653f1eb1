package rindward.controller.daemon;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import rindward.controller.settings.OwnFile;

/**
 * Sees to it that one process at a time has its hands on the parts of a shed: two that read through
 * one multiplexer read each other's rooms, and two that switch undo each other. The system lets go
 * of it when its owner dies, however it dies.
 */
public final class BoardLock implements AutoCloseable {
  private final FileChannel channel;

  private BoardLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Takes hold of a shed.
   *
   * @param store its database, beside which the lock lies
   * @return empty when another process has it
   * @throws IOException in one sentence, when the lock cannot be made
   */
  public static Optional<BoardLock> take(Path store) throws IOException {
    Path file = store.resolveSibling(store.getFileName() + ".lock");
    FileChannel channel;
    try {
      OwnFile.make(file);
      channel = FileChannel.open(file, StandardOpenOption.WRITE);
    } catch (IOException e) {
      throw new IOException(
          "the lock " + file + " cannot be made; its folder must be there and writable", e);
    }
    try {
      if (channel.tryLock() != null) {
        return Optional.of(new BoardLock(channel));
      }
    } catch (OverlappingFileLockException e) {
      // Held by this very process, which is as much as by another.
    }
    channel.close();
    return Optional.empty();
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
