package rindward.controller.desk;

import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.Alarm;
import rindward.controller.alarm.AlarmChange;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmRow;
import rindward.controller.alarm.AlarmSentence;
import rindward.controller.alarm.AlarmState;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Judgement;
import rindward.controller.alarm.LockOuts;
import rindward.controller.alarm.Priority;
import rindward.controller.alarm.RoomFacts;
import rindward.controller.store.AlarmLog;
import rindward.dashboard.alarms.AlarmHistoryView.TurnView;
import rindward.dashboard.alarms.AlarmRulesView.RuleView;
import rindward.dashboard.alarms.AlarmsView.AcceptedView;
import rindward.dashboard.alarms.AlarmsView.OpenView;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * Alarms as people read them.
 *
 * @param zone the site's, in which a forecast names its hour
 */
public record AlarmWords(AlarmTable table, ZoneId zone) {

  /** Returns one alarm as it stands. */
  OpenView alarm(AlarmId id, Judgement judgement) {
    AlarmRow row = table.row(id.kind());
    Alarm alarm = judgement.alarms().alarm(id);
    AlarmState state = alarm.state();
    boolean isOver = !alarm.condition().active();
    Optional<RoomFacts> room =
        judgement.facts().rooms().stream().filter(r -> r.room().equals(id.room())).findFirst();
    String howBad =
        isOver
            ? ""
            : room.map(
                    r ->
                        AlarmSentence.sentence(
                            id.kind(), r, judgement.at().atZone(zone).toLocalTime()))
                .orElse("");
    return new OpenView(
        id.key(),
        row.name(),
        orNull(id.room()),
        orNull(id.thing()),
        row.priority() == Priority.WAKE,
        word(state),
        isOver,
        state.needsAcknowledgement(),
        row.priority() == Priority.DIGEST && id.thing().isEmpty() && !id.room().isEmpty(),
        LockOuts.isAbout(id) && alarm.lasts() && !alarm.isOutOfService(),
        judgement.wall(alarm.condition().sinceSeconds()),
        state == AlarmState.SHELVED ? judgement.wall(alarm.shelvedUntilSeconds()) : null,
        orNull(howBad),
        row.actionWith(outputs(room, judgement)),
        row.cause(),
        row.consequence());
  }

  AcceptedView accepted(AlarmId id) {
    return new AcceptedView(
        id.key(), table.row(id.kind()).name(), orNull(id.room()), orNull(id.thing()));
  }

  /** Returns one turn of the history; nothing for what nobody would miss. */
  Optional<TurnView> turn(AlarmLog.Noted noted) {
    AlarmChange change = noted.turn().change();
    return what(change, noted.turn().by())
        .map(
            what ->
                new TurnView(
                    Instant.ofEpochMilli(noted.atMillis()),
                    change.id().key(),
                    table.row(change.id().kind()).name(),
                    orNull(change.id().room()),
                    orNull(change.id().thing()),
                    what,
                    orNull(noted.turn().by())));
  }

  RuleView rule(AlarmRow row) {
    return new RuleView(
        row.kind().word(),
        row.name(),
        word(row.priority()),
        row.onDelaySeconds(),
        row.offDelaySeconds(),
        Thousandths.toDouble(row.deadband()),
        row.isLatching(),
        row.isQuietDuringWork(),
        row.suppresses().stream().sorted().map(kind -> table.row(kind).name()).toList(),
        row.cause(),
        row.consequence(),
        row.action());
  }

  private static Optional<String> what(AlarmChange change, String by) {
    if (change.isCall()) {
      return Optional.of("called");
    }
    if (change.to() == AlarmState.SHELVED || change.to() == AlarmState.OUT_OF_SERVICE) {
      return Optional.of(word(change.to()));
    }
    if (change.to() == AlarmState.SUPPRESSED) {
      return change.from() == AlarmState.NORMAL ? Optional.empty() : Optional.of("hidden");
    }
    if (change.from() == AlarmState.SHELVED) {
      return Optional.of("calls-again");
    }
    if (change.from() == AlarmState.OUT_OF_SERVICE) {
      return Optional.of("back-in-service");
    }
    if (!by.isEmpty()) {
      boolean wasSeen = change.from().needsAcknowledgement() && !change.to().needsAcknowledgement();
      return Optional.of(wasSeen ? "acknowledged" : "reset");
    }
    return change.isOver() ? Optional.of("over") : Optional.empty();
  }

  /** The shed as a whole has what any of its rooms has. */
  private static Set<OutputKind> outputs(Optional<RoomFacts> room, Judgement judgement) {
    Set<OutputKind> all = EnumSet.noneOf(OutputKind.class);
    room.ifPresentOrElse(
        r -> all.addAll(r.outputs()),
        () -> judgement.facts().rooms().forEach(r -> all.addAll(r.outputs())));
    return all;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static @Nullable String orNull(String text) {
    return text.isEmpty() ? null : text;
  }
}
