package rindward.controller.lot;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.Tasting;
import rindward.controller.journal.UsesTicked;
import rindward.controller.tasting.design.SessionPlan;

/** All tasting sessions, as the journal tells them. */
public final class Sessions {
  private final Map<String, Session> byName;

  private Sessions(Map<String, Session> byName) {
    this.byName = Collections.unmodifiableMap(byName);
  }

  /** Tells the sessions from the journal, in the order in which they were planned. */
  public static Sessions of(List<Recorded> journal) {
    return of(journal, List.of());
  }

  /**
   * The same; of those that were told before, each of which nothing was said since stays what it
   * is, with all that was worked out of it.
   */
  public static Sessions of(List<Recorded> journal, List<Session> before) {
    Map<String, Session> known = new HashMap<>();
    before.forEach(session -> known.put(session.name(), session));
    Map<String, Story> stories = new LinkedHashMap<>();
    for (Recorded recorded : Lots.standing(journal)) {
      if (recorded.entry() instanceof Tasting entry) {
        stories.computeIfAbsent(entry.session(), name -> new Story()).tell(entry);
      }
    }
    Map<String, Session> sessions = new LinkedHashMap<>();
    stories.forEach(
        (name, story) -> story.told(known.get(name)).ifPresent(s -> sessions.put(name, s)));
    return new Sessions(sessions);
  }

  /** Returns the sessions in the order in which they were planned. */
  public Collection<Session> all() {
    return byName.values();
  }

  /** Returns the session of that name. */
  public Optional<Session> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** Gathers what was said of one session. */
  private static final class Story {
    private Optional<SessionPlanned> planned = Optional.empty();
    private final List<SampleCooked> cooked = new ArrayList<>();
    private final List<Scored> scored = new ArrayList<>();
    private final List<UsesTicked> ticked = new ArrayList<>();
    private Optional<SessionClosed> closed = Optional.empty();

    Optional<Session> told(@Nullable Session before) {
      return planned.map(p -> before != null && isSame(before, p) ? before : session(p));
    }

    private boolean isSame(Session before, SessionPlanned plan) {
      return before.planned().equals(plan)
          && before.closed().equals(closed)
          && before.cooked().equals(cooked)
          && before.scored().equals(scored)
          && before.ticked().equals(ticked);
    }

    private Session session(SessionPlanned plan) {
      SessionPlan drawn = plan.plan();
      return new Session(plan, drawn, cooked, scored, ticked, closed);
    }

    void tell(Tasting entry) {
      if (entry instanceof SessionPlanned plan) {
        planned = Optional.of(plan);
      } else if (entry instanceof SampleCooked fruit) {
        cooked.add(fruit);
      } else if (entry instanceof Scored answer) {
        scored.add(answer);
      } else if (entry instanceof UsesTicked uses) {
        ticked.add(uses);
      } else if (entry instanceof SessionClosed end) {
        closed = Optional.of(end);
      }
    }
  }
}
