package rindward.controller.notice;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmRow;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.HowBad;
import rindward.controller.alarm.RoomFacts;
import rindward.controller.alarm.ShedFacts;
import rindward.hardware.OutputKind;

/**
 * Puts an errand into words that help somebody who has just been woken: where, what, since when,
 * how bad, what to do in this very room, and where to read on.
 *
 * @param table of the kinds
 * @param site name of the farm
 * @param link address of the alarms' page; empty without
 */
public record Wording(AlarmTable table, String site, String link) {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY_AND_TIME =
      DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

  /** Returns the notice of an errand. */
  public Notice of(Errand errand, Rota rota, ShedFacts facts, ZonedDateTime now) {
    return errand.occasion() == Occasion.DIGEST
        ? digest(errand, rota, facts, now)
        : single(errand, rota, facts, now);
  }

  private Notice single(Errand errand, Rota rota, ShedFacts facts, ZonedDateTime now) {
    AlarmId id = errand.alarms().get(0);
    String subject = where(id) + ": " + row(id).name();
    StringJoiner text = new StringJoiner("\n");
    if (errand.occasion() == Occasion.ALL_CLEAR) {
      text.add(subject + " is over since " + now.format(TIME) + ".");
      return finished(errand, "All clear: " + subject, text);
    }
    text.add(paragraph(id, rota, facts, now));
    text.add("Usual cause: " + row(id).cause());
    text.add("If nothing is done: " + row(id).consequence());
    String opening =
        switch (errand.occasion()) {
          case NEXT_IN_LINE -> "Nobody has answered: ";
          case REMINDER -> "Still: ";
          case CALL, ALL_CLEAR, DIGEST -> "";
        };
    return finished(errand, opening + subject, text);
  }

  private Notice digest(Errand errand, Rota rota, ShedFacts facts, ZonedDateTime now) {
    StringJoiner text = new StringJoiner("\n\n");
    errand.alarms().forEach(id -> text.add(paragraph(id, rota, facts, now)));
    int count = errand.alarms().size();
    return finished(errand, "Today: " + count + (count == 1 ? " thing" : " things"), text);
  }

  private String paragraph(AlarmId id, Rota rota, ShedFacts facts, ZonedDateTime now) {
    Optional<RoomFacts> room =
        facts.rooms().stream().filter(r -> r.room().equals(id.room())).findFirst();
    Instant since = rota.since(id, now.toInstant());
    ZonedDateTime local = since.atZone(now.getZone());
    boolean isToday = local.toLocalDate().equals(now.toLocalDate());
    StringJoiner text = new StringJoiner("\n");
    text.add(
        where(id)
            + ": "
            + row(id).name()
            + (id.thing().isEmpty() ? "" : " (" + id.thing() + ")")
            + ", since "
            + local.format(isToday ? TIME : DAY_AND_TIME)
            + ".");
    room.map(r -> HowBad.sentence(id.kind(), r, now.toLocalTime()))
        .filter(sentence -> !sentence.isEmpty())
        .ifPresent(text::add);
    text.add("What to do: " + row(id).actionWith(outputs(room, facts)));
    return text.toString();
  }

  /** The shed as a whole has what any of its rooms has. */
  private static Set<OutputKind> outputs(Optional<RoomFacts> room, ShedFacts facts) {
    Set<OutputKind> all = EnumSet.noneOf(OutputKind.class);
    room.ifPresentOrElse(
        r -> all.addAll(r.outputs()), () -> facts.rooms().forEach(r -> all.addAll(r.outputs())));
    return all;
  }

  private Notice finished(Errand errand, String subject, StringJoiner text) {
    return new Notice(
        errand.person(),
        site + ", " + subject,
        link.isEmpty() ? text.toString() : text + "\n\n" + link);
  }

  private AlarmRow row(AlarmId id) {
    return table.row(id.kind());
  }

  private static String where(AlarmId id) {
    return id.room().isEmpty() ? "Shed" : "Room " + id.room();
  }
}
