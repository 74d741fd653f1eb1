package rindward.controller.daemon;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.control.ControlMemory;
import rindward.controller.control.KeptMemory;
import rindward.controller.control.Tick;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.Room;
import rindward.controller.settings.OwnFile;
import rindward.controller.settings.Settings;
import rindward.controller.store.StoreFiles;

/**
 * What control believes of each room, kept over restarts in a small file beside the record. It is a
 * cache: without it, or with one that cannot be read, rooms begin cautiously. {@link #begin} and
 * {@link #note} are for the control loop and wait for nothing; {@link #keep} writes, and is for
 * another thread.
 */
final class KeptMemories {
  private static final Logger LOG = LoggerFactory.getLogger(KeptMemories.class);

  /** Within this time nothing of a room changes much that cannot be seen again. */
  static final Duration EVERY = Duration.ofMinutes(5);

  private static final Duration NOTED_EVERY = Duration.ofMinutes(1);

  /** Raised whenever a record that is kept means something else. */
  private static final int VERSION = 1;

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .visibility(PropertyAccessor.ALL, Visibility.NONE)
          .visibility(PropertyAccessor.FIELD, Visibility.ANY)
          .visibility(PropertyAccessor.CREATOR, Visibility.ANY)
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .build();

  private record Kept(int version, Map<String, KeptMemory> rooms) {}

  private final Path file;
  private final Map<String, String> wiring;
  private final Map<String, KeptMemory> before;
  private long notedNanos = Long.MIN_VALUE;
  private volatile @Nullable Kept noted;
  private @Nullable Kept written;

  /**
   * Reads what was kept.
   *
   * @param wiring what each room is wired with; by its name
   */
  KeptMemories(Path file, Map<String, String> wiring) {
    this.file = file;
    this.wiring = Map.copyOf(wiring);
    this.before = read(file);
  }

  /** Reads what was kept beside the record of a shed. */
  static KeptMemories of(Settings settings) {
    Map<String, String> wiring = new HashMap<>();
    settings.rooms().forEach(room -> wiring.put(room.name(), wiring(settings, room)));
    return new KeptMemories(StoreFiles.beside(settings.store(), ".estimate"), wiring);
  }

  /**
   * Returns the memory with which a room begins.
   *
   * @param isDated whether the time can be believed
   */
  ControlMemory begin(Room room, Tick now, boolean isDated) {
    KeptMemory kept = before.get(room.name());
    return kept == null
        ? ControlMemory.atStart(now.nanos())
        : kept.resumed(now, isDated, wiring.getOrDefault(room.name(), ""));
  }

  /** Takes in what control believes after a tick. */
  void note(Map<String, ControlMemory> memories, Tick now) {
    if (notedNanos != Long.MIN_VALUE && now.nanos() - notedNanos < NOTED_EVERY.toNanos()) {
      return;
    }
    notedNanos = now.nanos();
    Map<String, KeptMemory> rooms = new HashMap<>();
    memories.forEach(
        (room, memory) ->
            rooms.put(room, KeptMemory.of(memory, wiring.getOrDefault(room, ""), now)));
    noted = new Kept(VERSION, rooms);
  }

  /** Writes what was noted since the last time. */
  synchronized void keep() {
    Kept now = noted;
    if (now == null || now == written) {
      return;
    }
    try {
      OwnFile.write(file, JSON.writeValueAsString(now));
      written = now;
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("what control believes has no JSON form", e);
    } catch (IOException e) {
      throw new UncheckedIOException(file + " cannot be written: " + e.getMessage(), e);
    }
  }

  private static Map<String, KeptMemory> read(Path file) {
    try {
      Kept kept = JSON.readValue(Files.readString(file), Kept.class);
      if (kept != null && kept.version() == VERSION && kept.rooms() != null) {
        return kept.rooms();
      }
    } catch (NoSuchFileException none) {
      return Map.of();
    } catch (IOException | IllegalArgumentException e) {
      LOG.warn("{} says nothing of use, and the rooms are learned anew: {}", file, e.getMessage());
    }
    return Map.of();
  }

  /** What the room is learned with; figures learned with other parts are of another room. */
  private static String wiring(Settings settings, Room room) {
    return String.valueOf(
        List.of(
            settings.probes().stream()
                .filter(p -> p.room().equals(room.name()) || p.place() == ProbePlace.OUTDOOR)
                .toList(),
            settings.outputs().stream().filter(o -> o.room().equals(room.name())).toList(),
            room.outputs().values().stream().toList(),
            settings.simulation()));
  }
}
