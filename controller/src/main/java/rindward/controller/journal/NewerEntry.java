package rindward.controller.journal;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a newer version of this program wrote and this one cannot read, wholly or in part: of a kind
 * or a version that it does not know, or with a field that it does not know. It is kept as it is.
 * It may have been a lock-out or a finding of harm, so whatever it is about is treated with care.
 *
 * @param at when it happened; when it was said, if even that cannot be read
 * @param kind what it calls itself; empty if even that cannot be read
 * @param body as it stands in the journal
 * @param lots codes of the lots it is about
 * @param places rooms and other places it is about
 * @param outputs names or kinds of the outputs it is about
 */
public record NewerEntry(
    String subject,
    Instant at,
    String kind,
    String body,
    Set<String> lots,
    Set<String> places,
    Set<String> outputs)
    implements Entry {
  private static final Set<String> OF_LOTS = Set.of("lot", "lots");
  private static final Set<String> OF_PLACES = Set.of("room", "rooms", "place", "places");
  private static final Set<String> OF_OUTPUTS = Set.of("output", "outputs");

  /** What people are shown as its kind. */
  public static final String KIND = "said by a newer version";

  /** What people are told of what it is about. */
  public static final String SENTENCE =
      "A newer version of this program said something of it that this version cannot read.";

  public NewerEntry {
    lots = Set.copyOf(lots);
    places = Set.copyOf(places);
    outputs = Set.copyOf(outputs);
  }

  /**
   * Returns an entry that cannot be read.
   *
   * @param subject under which it was kept
   * @param saidAt when it was said
   * @param plain what can be made of the body; empty if nothing can
   */
  public static NewerEntry of(String subject, Instant saidAt, String body, Map<?, ?> plain) {
    Set<String> lots = new HashSet<>(named(plain, OF_LOTS));
    Set<String> places = new HashSet<>(named(plain, OF_PLACES));
    String last = subject.substring(subject.lastIndexOf(' ') + 1);
    if (Limit.isCode(subject)) {
      lots.add(subject);
    }
    if (lots.isEmpty()) {
      places.add(subject);
      places.add(last);
    }
    return new NewerEntry(
        subject,
        plain.get("at") instanceof String at ? time(at, saidAt) : saidAt,
        plain.get("kind") instanceof String kind ? kind : "",
        body,
        lots,
        places,
        named(plain, OF_OUTPUTS));
  }

  /** Tells whether it may be about a lot: it names it, or it names no lot and the lot's place. */
  public boolean isAbout(String lot, String place) {
    return lots.contains(lot) || (lots.isEmpty() && places.contains(place));
  }

  /** Tells whether it may be about a room itself, and not about a lot that lies there. */
  public boolean isAboutRoom(String room) {
    return (lots.isEmpty() && places.contains(room)) || subject.equals(room);
  }

  private static Instant time(String text, Instant otherwise) {
    try {
      return Instant.parse(text);
    } catch (DateTimeException e) {
      return otherwise;
    }
  }

  private static Set<String> named(@Nullable Object plain, Set<String> names) {
    Set<String> found = new HashSet<>();
    if (plain instanceof Map<?, ?> map) {
      map.forEach(
          (name, value) -> found.addAll(names.contains(name) ? texts(value) : named(value, names)));
    } else if (plain instanceof List<?> list) {
      list.forEach(one -> found.addAll(named(one, names)));
    }
    return found;
  }

  private static Set<String> texts(@Nullable Object value) {
    Set<String> texts = new HashSet<>();
    if (value instanceof String text) {
      texts.add(text);
    } else if (value instanceof List<?> list) {
      list.forEach(one -> texts.addAll(texts(one)));
    }
    return texts;
  }
}
