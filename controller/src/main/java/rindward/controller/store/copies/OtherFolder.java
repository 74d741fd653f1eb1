package rindward.controller.store.copies;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import rindward.controller.settings.OwnFile;

/** A folder of another disk or of a share, as the system has mounted it. */
public final class OtherFolder implements SecondPlace {
  private static final String UNFINISHED = ".part";

  private final Path folder;
  private final CopyNames names;
  private final ZoneId zone;
  private final BiPredicate<Path, Path> isSameDisk;

  /**
   * @param folder must be there: where a disk is not plugged in, its folder is an empty one of ours
   * @param database whose copies they are
   * @param zone whose nights and weeks are meant
   */
  public OtherFolder(Path folder, Path database, ZoneId zone) {
    this(folder, database, zone, OtherFolder::isSameDisk);
  }

  OtherFolder(Path folder, Path database, ZoneId zone, BiPredicate<Path, Path> isSameDisk) {
    this.folder = folder;
    this.names = new CopyNames(database.getFileName().toString());
    this.zone = zone;
    this.isSameDisk = isSameDisk;
  }

  @Override
  public void take(Path copy) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new IOException("the folder " + folder + " is not there; is its disk plugged in?");
    }
    if (isSameDisk.test(folder, copy)) {
      throw new IOException(
          "the folder " + folder + " lies on the same disk as the record; is its own plugged in?");
    }
    Path there = folder.resolve(copy.getFileName());
    Path unfinished = folder.resolve(copy.getFileName() + UNFINISHED);
    try {
      bring(copy, unfinished);
      if (!Digest.of(unfinished).equals(Digest.of(copy))) {
        throw new IOException("what was read back is not what was written");
      }
      Files.move(unfinished, there, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      Files.deleteIfExists(unfinished);
      throw new IOException("the copy " + there + " could not be made: " + e.getMessage(), e);
    }
    for (String name : names.notKept(present(), zone)) {
      Files.deleteIfExists(folder.resolve(name));
    }
  }

  private static void bring(Path copy, Path to) throws IOException {
    Files.deleteIfExists(to);
    OwnFile.make(to);
    try (FileChannel channel = FileChannel.open(to, StandardOpenOption.WRITE);
        InputStream from = Files.newInputStream(copy);
        OutputStream into = Channels.newOutputStream(channel)) {
      long unused = from.transferTo(into);
      channel.force(true);
    }
  }

  private List<String> present() throws IOException {
    List<String> present = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      files.forEach(file -> present.add(file.getFileName().toString()));
    }
    return present;
  }

  private static boolean isSameDisk(Path folder, Path copy) {
    try {
      return Files.getFileStore(folder).equals(Files.getFileStore(copy));
    } catch (IOException e) {
      return false; // Writing there says better what is wrong.
    }
  }
}
