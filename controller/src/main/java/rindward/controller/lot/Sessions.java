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
import rindward.controller.journal.TakenBack;
import rindward.controller.journal.Tasting;
import rindward.controller.journal.TastingVisitor;
import rindward.controller.journal.UsesTicked;
import rindward.controller.tasting.SessionPlan;

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
        entry.accept(stories.computeIfAbsent(entry.session(), name -> new Story()));
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
  private static final class Story implements TastingVisitor<Boolean> {
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
      SessionPlan drawn = SessionPlan.draw(plan.request(), plan.seed());
      return new Session(plan, drawn, cooked, scored, ticked, closed);
    }

    @Override
    public Boolean planned(SessionPlanned entry) {
      planned = Optional.of(entry);
      return true;
    }

    @Override
    public Boolean cooked(SampleCooked entry) {
      return cooked.add(entry);
    }

    @Override
    public Boolean scored(Scored entry) {
      return scored.add(entry);
    }

    @Override
    public Boolean usesTicked(UsesTicked entry) {
      return ticked.add(entry);
    }

    @Override
    public Boolean takenBack(TakenBack entry) {
      return false;
    }

    @Override
    public Boolean closed(SessionClosed entry) {
      closed = Optional.of(entry);
      return true;
    }
  }
}
