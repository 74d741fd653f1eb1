package rindward.controller.store.current;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Which lots were served in which sessions of tasting; a lot is told by both. For one thread. */
final class Servings {
  private final Map<String, Set<String>> sessionsByLot = new HashMap<>();
  private final Map<String, Set<String>> lotsBySession = new HashMap<>();
  private final Map<String, Set<String>> unsaved = new HashMap<>();

  void add(String lot, String session) {
    String code = lot.intern();
    String name = session.intern();
    if (sessionsByLot.computeIfAbsent(code, l -> new HashSet<>(4)).add(name)) {
      lotsBySession.computeIfAbsent(name, s -> new HashSet<>(16)).add(code);
      unsaved.computeIfAbsent(code, l -> new HashSet<>(4)).add(name);
    }
  }

  Set<String> sessionsOf(String lot) {
    return Collections.unmodifiableSet(sessionsByLot.getOrDefault(lot, Set.of()));
  }

  Set<String> lotsIn(String session) {
    return Collections.unmodifiableSet(lotsBySession.getOrDefault(session, Set.of()));
  }

  /** Returns what was added since {@link #saved}. */
  Map<String, Set<String>> unsaved() {
    return unsaved;
  }

  void saved() {
    unsaved.clear();
  }

  void clear() {
    sessionsByLot.clear();
    lotsBySession.clear();
    unsaved.clear();
  }
}
