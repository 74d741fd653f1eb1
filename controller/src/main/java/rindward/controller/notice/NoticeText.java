package rindward.controller.notice;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmRow;
import rindward.controller.alarm.AlarmSentence;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Judgement;
import rindward.controller.alarm.Priority;
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
public record NoticeText(AlarmTable table, String site, String link) {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY_AND_TIME =
      DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

  /** Returns the notice of an errand. */
  public Notice of(
      NotificationTask errand, EscalationState rota, Judgement judgement, ZonedDateTime now) {
    return errand.occasion() == NotificationReason.DIGEST
        ? digest(errand, rota, judgement, now)
        : single(errand, rota, judgement, now);
  }

  private Notice single(
      NotificationTask errand, EscalationState rota, Judgement judgement, ZonedDateTime now) {
    AlarmId id = errand.alarms().get(0);
    String subject = where(id) + ": " + row(id).name();
    StringJoiner text = new StringJoiner("\n");
    if (errand.occasion() == NotificationReason.ALL_CLEAR) {
      text.add(subject + " is over since " + now.format(TIME) + ".");
      return finished(errand, "All clear: " + subject, text);
    }
    text.add(paragraph(id, rota, judgement, now));
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

  /** What asks for something comes first; what is only good to know stands below it. */
  private Notice digest(
      NotificationTask errand, EscalationState rota, Judgement judgement, ZonedDateTime now) {
    List<AlarmId> news = errand.alarms().stream().filter(this::isNews).toList();
    List<AlarmId> work = errand.alarms().stream().filter(id -> !isNews(id)).toList();
    StringJoiner text = new StringJoiner("\n\n");
    work.forEach(id -> text.add(paragraph(id, rota, judgement, now)));
    if (!news.isEmpty()) {
      text.add(work.isEmpty() ? "News of the lots:" : "And news of the lots:");
      news.forEach(id -> text.add(paragraph(id, rota, judgement, now)));
    }
    StringJoiner subject = new StringJoiner(" and ");
    if (!work.isEmpty()) {
      subject.add(work.size() + (work.size() == 1 ? " thing" : " things") + " to look at");
    }
    if (!news.isEmpty()) {
      subject.add("news of " + news.size() + (news.size() == 1 ? " lot" : " lots"));
    }
    return finished(errand, "today: " + subject, text);
  }

  private String paragraph(
      AlarmId id, EscalationState rota, Judgement judgement, ZonedDateTime now) {
    Optional<RoomFacts> room =
        judgement.facts().rooms().stream().filter(r -> r.room().equals(id.room())).findFirst();
    boolean isOver = !judgement.alarms().alarm(id).condition().active();
    StringJoiner text = new StringJoiner("\n");
    text.add(
        where(id)
            + ": "
            + row(id).name()
            + (id.thing().isEmpty() || isOfLot(id) ? "" : " (" + id.thing() + ")")
            + ", since "
            + told(rota.since(id, now.toInstant()).atZone(now.getZone()), now)
            + (isOver ? "; it is over now." : "."));
    if (!isOver) {
      room.map(r -> AlarmSentence.sentence(id.kind(), r, now.toLocalTime()))
          .filter(sentence -> !sentence.isEmpty())
          .ifPresent(text::add);
    }
    text.add("What to do: " + row(id).actionWith(outputs(room, judgement.facts())));
    return text.toString();
  }

  private static String told(ZonedDateTime since, ZonedDateTime now) {
    boolean isToday = since.toLocalDate().equals(now.toLocalDate());
    return since.format(isToday ? TIME : DAY_AND_TIME);
  }

  /** The shed as a whole has what any of its rooms has. */
  private static Set<OutputKind> outputs(Optional<RoomFacts> room, ShedFacts facts) {
    Set<OutputKind> all = EnumSet.noneOf(OutputKind.class);
    room.ifPresentOrElse(
        r -> all.addAll(r.outputs()), () -> facts.rooms().forEach(r -> all.addAll(r.outputs())));
    return all;
  }

  private Notice finished(NotificationTask errand, String subject, StringJoiner text) {
    return new Notice(
        errand.person(),
        site + ", " + subject,
        link.isEmpty() ? text.toString() : text + "\n\n" + link);
  }

  private AlarmRow row(AlarmId id) {
    return table.row(id.kind());
  }

  private boolean isNews(AlarmId id) {
    return row(id).priority() == Priority.NEWS;
  }

  private static boolean isOfLot(AlarmId id) {
    return id.room().isEmpty()
        && switch (id.kind()) {
          case LOT_HARMFUL, LOT_CURED, LOT_READY, LOT_EAT_FIRST, LOT_PAST -> true;
          default -> false;
        };
  }

  private static String where(AlarmId id) {
    if (isOfLot(id)) {
      return "Lot " + id.thing();
    }
    return id.room().isEmpty() ? "Shed" : "Room " + id.room();
  }
}
