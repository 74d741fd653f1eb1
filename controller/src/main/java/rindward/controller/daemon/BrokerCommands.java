package rindward.controller.daemon;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.broadcast.Intake;
import rindward.controller.desk.AlarmBook;
import rindward.controller.desk.AlarmWords;
import rindward.controller.desk.ShedParts;
import rindward.controller.link.ControlView;
import rindward.controller.settings.Settings;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.EventLog;
import rindward.controller.store.SignInStore;
import rindward.dashboard.alarms.AlarmRefused;
import rindward.dashboard.alarms.AlarmsDesk;
import rindward.dashboard.shed.ManualCommand;
import rindward.dashboard.shed.ShedDesk;
import rindward.dashboard.shed.SwitchingRefused;

/** Does what was said over the broker as if it had been said on the page: by the same desks. */
final class BrokerCommands implements Intake.Hand {
  private final AlarmsDesk alarms;
  private final ShedDesk shed;

  BrokerCommands(AlarmsDesk alarms, ShedDesk shed) {
    this.alarms = alarms;
    this.shed = shed;
  }

  /** Wires what a word over the broker needs: who may speak, and the desks that do what is said. */
  static OutwardWiring.Listening listening(
      Settings settings, RecordWiring record, AlarmTable table, ControlView control, Time time) {
    WordKeys keys = new WordKeys(new SignInStore(record.database()), time);
    AlarmsDesk alarms =
        new AlarmBook(
            new AlarmWords(table, settings.zone()),
            table,
            settings.rooms(),
            record.door(),
            new AlarmLog(new EventLog(record.database())),
            control,
            () -> time.now().at());
    ShedDesk shed =
        new ShedParts(
            BuildVersion.told(), settings.probes(), control, List::of, record.door(), time::now);
    return new OutwardWiring.Listening(keys::of, new BrokerCommands(alarms, shed));
  }

  @Override
  public Optional<String> answer(
      String alarm, String answer, @Nullable Instant until, String by, String request) {
    try {
      alarms.answer(new AlarmsDesk.Answer(alarm, answer, until, null, by, request));
      return Optional.empty();
    } catch (AlarmRefused refused) {
      return Optional.of(String.valueOf(refused.getMessage()));
    }
  }

  @Override
  public Optional<String> command(
      String room, String kind, boolean on, Instant until, String by, String request) {
    long most = shed.shed().longestManualMinutes();
    if (!until.isAfter(shed.now()) || until.isAfter(shed.now().plusSeconds(60 * most))) {
      return Optional.of("until must be after now and at most " + most + " minutes ahead.");
    }
    try {
      shed.command(new ManualCommand(room, kind, on, until, by, request));
      return Optional.empty();
    } catch (SwitchingRefused refused) {
      return Optional.of(String.valueOf(refused.getMessage()));
    }
  }

  @Override
  public Optional<String> release(String room, String kind, String by) {
    try {
      shed.release(room, kind, by);
      return Optional.empty();
    } catch (SwitchingRefused refused) {
      return Optional.of(String.valueOf(refused.getMessage()));
    }
  }
}
