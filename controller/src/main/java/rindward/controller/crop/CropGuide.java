package rindward.controller.crop;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/** Every type of crop that is known here, and where its numbers come from. Immutable. */
public final class CropGuide {
  private final Map<String, Crop> byKey;
  private final Map<String, Crop> byAnyName;
  private final Sources sources;
  private final Map<SpeciesGroup, List<HarmRule>> harms;

  /**
   * @param crops no key or alias twice
   * @param sources titles of every source a crop names
   * @param harms what makes fruits of a group harmful
   */
  public CropGuide(List<Crop> crops, Sources sources, Map<SpeciesGroup, List<HarmRule>> harms) {
    this.harms = Map.copyOf(harms);
    Map<String, Crop> keys = new TreeMap<>();
    Map<String, Crop> names = new TreeMap<>();
    for (Crop crop : crops) {
      keys.put(crop.key(), crop);
      List<String> all = new ArrayList<>(crop.aliases());
      all.add(crop.key());
      for (String name : all) {
        if (names.put(name, crop) != null) {
          throw new IllegalArgumentException(
              "the guide had '" + name + "' twice but a name must stand for one type");
        }
      }
    }
    this.byKey = Collections.unmodifiableMap(keys);
    this.byAnyName = Collections.unmodifiableMap(names);
    this.sources = sources;
  }

  /**
   * Returns a number that is the same for guides that say the same, in every run of the program. A
   * set shows its elements in another order at each start: the words count, and not their order.
   */
  public long fingerprint() {
    CRC32 sum = new CRC32();
    Stream.of((byKey.values().toString() + harms).split("[^\\w.-]+"))
        .sorted()
        .forEach(word -> sum.update((word + " ").getBytes(StandardCharsets.UTF_8)));
    return sum.getValue();
  }

  /** Returns the type with this key or alias. */
  public Optional<Crop> crop(String name) {
    return Optional.ofNullable(byAnyName.get(name));
  }

  /** Returns all keys in alphabetical order, without aliases. */
  public Set<String> keys() {
    return byKey.keySet();
  }

  /** Returns all types by key. */
  public List<Crop> crops() {
    return List.copyOf(byKey.values());
  }

  /** Returns what makes fruits of a group harmful. */
  public Map<SpeciesGroup, List<HarmRule>> harms() {
    return harms;
  }

  /** Returns what the source keys stand for. */
  public Sources sources() {
    return sources;
  }

  /** Returns the key or alias that was probably meant by a name that is not in the guide. */
  public Optional<String> nearest(String name) {
    return Nearest.to(name, byAnyName.keySet());
  }
}
