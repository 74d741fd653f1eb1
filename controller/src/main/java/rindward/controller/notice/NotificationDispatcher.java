package rindward.controller.notice;

import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Judgement;

/**
 * From the alarms of a tick to what people are sent: keeps the rota, words each errand and leaves
 * it at the channels of its person. Leaving never waits; each {@link DeliveryQueue} is worked off
 * by a thread of its own. {@link #after} is for the control thread, all else for any.
 */
public final class NotificationDispatcher {
  private final AlarmTable table;
  private final EscalationLine line;
  private final NoticeText wording;
  private final ZoneId zone;
  private final Map<String, DeliveryQueue> deliveries = new LinkedHashMap<>();
  private EscalationState rota;

  /**
   * @param rota who had been told what when the program ended
   * @param channels every channel that a person of the line names
   */
  public NotificationDispatcher(
      AlarmTable table,
      EscalationLine line,
      NoticeText wording,
      ZoneId zone,
      EscalationState rota,
      List<Channel> channels) {
    this.table = table;
    this.line = line;
    this.wording = wording;
    this.zone = zone;
    this.rota = rota;
    channels.forEach(channel -> deliveries.put(channel.name(), new DeliveryQueue(channel)));
  }

  /** Takes in what a tick made of the alarms, and returns whom it gave something to be told. */
  public List<NotificationTask> after(Judgement judgement, Instant now) {
    rota = rota.after(judgement.alarms(), table, line, zone, now);
    for (NotificationTask errand : rota.errands()) {
      Notice notice = wording.of(errand, rota, judgement, now.atZone(zone));
      line.persons().stream()
          .filter(person -> person.name().equals(errand.person()))
          .flatMap(person -> person.channels().stream())
          .map(deliveries::get)
          .filter(delivery -> delivery != null)
          .forEach(delivery -> delivery.leave(notice));
    }
    return rota.errands();
  }

  /** Returns what each channel still has to send, by its name. */
  public Map<String, DeliveryQueue> deliveries() {
    return Map.copyOf(deliveries);
  }
}
