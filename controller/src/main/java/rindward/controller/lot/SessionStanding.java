package rindward.controller.lot;

import static rindward.controller.journal.FieldErrors.wrong;

import java.util.List;
import java.util.Optional;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.Tasting;
import rindward.controller.journal.UsesTicked;
import rindward.controller.tasting.Score;
import rindward.controller.tasting.design.Sheet;

/** Why something cannot be said of a tasting session as it stands; nothing when it can. */
final class SessionStanding {
  private final Sessions sessions;

  SessionStanding(Standing standing) {
    this.sessions = standing.sessions();
  }

  /** A name stands for one session. */
  Optional<String> isNew(SessionPlanned entry) {
    return sessions.find(entry.session()).isPresent()
        ? wrong("session", entry.session(), "a session of that name is planned already")
        : Optional.empty();
  }

  /** The fruit is one that was to be cut for the sample. */
  Optional<String> isServed(SampleCooked entry) {
    Session session = sessions.find(entry.session()).orElseThrow();
    Optional<Served> sample = session.sample(entry.sample());
    if (sample.isEmpty()) {
      return wrong(
          "sample",
          entry.sample(),
          "it must be one of " + session.planned().samples().stream().map(Served::name).toList());
    }
    if (!sample.get().lot().equals(entry.lot())) {
      return wrong("lot", entry.lot(), "the sample comes from " + sample.get().lot());
    }
    return sample.get().fruits().contains(entry.fruit())
        ? Optional.empty()
        : wrong("fruit", entry.fruit(), "it must be one of " + sample.get().fruits());
  }

  /** The cup stands before the panelist, and the question has such an answer. */
  Optional<String> canScore(Scored entry) {
    return cup(entry, entry.panelist(), entry.code())
        .or(
            () ->
                sessions
                    .find(entry.session())
                    .orElseThrow()
                    .plan()
                    .refusal(new Score(entry.code(), entry.attribute(), entry.value())));
  }

  /** The cup stands before the panelist. */
  Optional<String> canTick(UsesTicked entry) {
    return cup(entry, entry.panelist(), entry.code());
  }

  /** Somebody has scored, and it is said what was in the cups, or that nobody knows. */
  Optional<String> canClose(SessionClosed entry) {
    Session session = sessions.find(entry.session()).orElseThrow();
    if (session.scored().isEmpty()) {
      return wrong("session", entry.session(), "nobody has scored anything yet");
    }
    List<String> open = session.fruitsOpen().stream().map(Served::name).toList();
    return entry.fruitsNotKnown() || open.isEmpty()
        ? Optional.empty()
        : wrong(
            "session",
            entry.session(),
            "nobody said which fruits were cooked for "
                + String.join(", ", open)
                + ": say that they are those that were planned, or that it is not known; then it"
                + " counts for this tasting and for no variety");
  }

  /** The session is under way. */
  Optional<String> isUnderWay(Tasting entry) {
    Optional<Session> session = sessions.find(entry.session());
    if (session.isEmpty()) {
      return wrong("session", entry.session(), "no session of that name is planned");
    }
    return session
        .get()
        .closed()
        .flatMap(end -> wrong("session", entry.session(), "it was closed at " + end.at()));
  }

  private Optional<String> cup(Tasting entry, String panelist, String code) {
    Session session = sessions.find(entry.session()).orElseThrow();
    Optional<Sheet> sheet =
        session.plan().sheets().stream().filter(s -> s.panelist().equals(panelist)).findFirst();
    if (sheet.isEmpty()) {
      return wrong("panelist", panelist, "it must be one of " + session.planned().panelists());
    }
    return sheet.get().codes().contains(code)
        ? Optional.empty()
        : wrong(
            "code",
            code,
            "it must be one of the cups of "
                + panelist
                + ": "
                + String.join(", ", sheet.get().codes()));
  }
}
