package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.command.demo.DemoCommand;
import rindward.controller.store.copies.Copies;
import rindward.controller.store.copies.StartCheck;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;

/**
 * Third promise, tried: the program is killed, and its files are looked at in the middle of its
 * work, at moments nobody chose. {@code -Drindward.kills=200} kills more often than every build
 * does.
 */
class PowerCutIT {
  private static final int KILLS = Integer.getInteger("rindward.kills", 20);
  private static final int COPIES = Integer.getInteger("rindward.copies", 50);
  private static final int CUTS = 60;
  private static final Instant START = Instant.parse("2026-09-20T00:00:00Z");
  private static final int TICK_SECONDS = 10;
  private static final int LOST_SECONDS = 60;

  @TempDir private Path folder;
  private final Random random = new Random(25);

  @Test
  void killedAtAnyMoment_nothingSaidIsLost_andAtMostAMinuteOfSamples() throws Exception {
    Path settings = settings();
    Set<String> acknowledged = new HashSet<>();
    Instant start = START;
    for (int kill = 0; kill < KILLS; kill++) {
      LoadedShed shed = new LoadedShed(settings, start);
      shed.work(random.nextInt(300));
      shed.kill();
      acknowledged.addAll(shed.said());

      Remembered remembered = remembered(store());
      assertThat(remembered.requests).containsAll(acknowledged);
      assertThat(shed.lastTick() - remembered.seconds.last()).isLessThanOrEqualTo(LOST_SECONDS);
      start = Instant.ofEpochSecond(shed.lastTick());
    }

    long gaps = gaps(remembered(store()).seconds);
    assertThat(gaps).as("gaps of %s kills", KILLS).isLessThanOrEqualTo(KILLS);
    assertThat(Soundness.flaw(store())).isEmpty();
  }

  @Test
  void filesAsTheyAreAtAnyMoment_openAndHoldWhatWasAcknowledged() throws Exception {
    LoadedShed shed = new LoadedShed(settings(), START);
    for (int i = 0; i < COPIES; i++) {
      shed.work(random.nextInt(40));
      shed.freeze();
      Set<String> acknowledged = shed.said();
      long lastTick = shed.lastTick();
      Path copy = copyOfFiles(store(), "cut-" + i);
      shed.goOn();

      Remembered remembered = remembered(copy);
      assertThat(remembered.requests).containsAll(acknowledged);
      assertThat(lastTick - remembered.seconds.last()).isLessThanOrEqualTo(LOST_SECONDS);
    }
    shed.kill();
  }

  @Test
  void filesCutShort_open_orAreSetAsideWithTheNewestCopyOffered() throws Exception {
    LoadedShed shed = new LoadedShed(settings(), START);
    shed.work(1_000);
    shed.kill();
    Path logged = copyOfFiles(store(), "logged");
    Path newest;
    try (Database database = new Database(store())) {
      newest = copies(database).make(START);
    }
    int[] setAside = new int[3];
    for (int i = 0; i < CUTS; i++) {
      // By turns: the file alone, the file beside its log, and the log.
      Path file = copyOfFiles(i % 3 == 0 ? newest : logged, "short-" + i);
      cut(i % 3 == 2 ? StoreFiles.log(file) : file);
      boolean opens = opensOrIsSetAside(file, newest);
      setAside[i % 3] += opens ? 0 : 1;
      if (opens && i % 3 == 0) {
        // Of its last page it has lost what was empty.
        assertThat(remembered(file)).isEqualTo(remembered(newest));
      }
    }
    // What a log has lost may stand in the file, and what a file has lost may stand in its log.
    assertThat(setAside[0]).isGreaterThan(CUTS / 3 / 2);
  }

  private boolean opensOrIsSetAside(Path file, Path newest) throws IOException {
    try (Database database = new Database(file)) {
      Optional<String> sentence = StartCheck.look(database, copies(database), START);
      assertThat(database.<Optional<String>>read(Soundness::quickFlaw)).isEmpty();
      if (sentence.isPresent()) {
        Path aside = StoreFiles.beside(file, ".damaged-" + StoreFiles.MOMENT.format(START));
        assertThat(aside).exists();
        assertThat(sentence.get())
            .startsWith("new, for the one before, " + file + ", is ")
            .contains("was set aside as " + aside, "the newest copy is " + newest);
      }
      return sentence.isEmpty();
    }
  }

  private Copies copies(Database database) {
    return new Copies(database, folder.resolve("backups"), ZoneOffset.UTC);
  }

  private void cut(Path file) throws IOException {
    try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
      open.setLength(random.nextInt((int) open.length()));
    }
  }

  /** What is found when the files are opened again. */
  private record Remembered(Set<String> requests, TreeSet<Long> seconds) {}

  private static Remembered remembered(Path file) {
    Set<String> requests = new HashSet<>();
    TreeSet<Long> seconds = new TreeSet<>();
    try (Database database = new Database(file)) {
      assertThat(database.<Optional<String>>read(Soundness::quickFlaw)).isEmpty();
      new Journal(database).since(0, entry -> requests.add(entry.request()));
      new SampleStore(database, new SampleLog(database))
          .history("storage")
          .forEach(
              START.toEpochMilli(),
              Long.MAX_VALUE / 2,
              run -> {
                for (int i = 0; i < run.count(); i++) {
                  seconds.add((run.startMillis() + (long) run.stepMillis() * i) / 1000);
                }
              });
    }
    return new Remembered(requests, seconds);
  }

  /** Counts the gaps; none may be longer than what may be lost and the tick after it. */
  private static long gaps(TreeSet<Long> seconds) {
    List<Long> gaps = new ArrayList<>();
    long before = START.getEpochSecond();
    for (long second : seconds) {
      gaps.add(second - before);
      before = second;
    }
    assertThat(gaps).allMatch(gap -> gap <= LOST_SECONDS + TICK_SECONDS);
    return gaps.stream().filter(gap -> gap > TICK_SECONDS).count();
  }

  private Path store() {
    return folder.resolve("rindward.db");
  }

  private Path settings() throws IOException {
    Path file = folder.resolve("shed.toml");
    try (InputStream in = DemoCommand.class.getResourceAsStream("shed.toml")) {
      Files.copy(in, file);
    }
    return file;
  }

  private Path copyOfFiles(Path file, String name) throws IOException {
    Path copy = Files.createDirectory(folder.resolve(name)).resolve("rindward.db");
    Files.copy(file, copy);
    if (Files.exists(StoreFiles.log(file))) {
      Files.copy(StoreFiles.log(file), StoreFiles.log(copy));
    }
    return copy;
  }
}
