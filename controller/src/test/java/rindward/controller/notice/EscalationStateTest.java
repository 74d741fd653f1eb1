package rindward.controller.notice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Alarms;
import rindward.controller.alarm.Finding;
import rindward.controller.alarm.Judgement;
import rindward.controller.alarm.Priority;
import rindward.controller.alarm.RoomFacts;
import rindward.controller.alarm.ShedFacts;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.settings.AlarmTableReader;
import rindward.hardware.OutputKind;

/** Who is told in which order, how often, and what waits for the morning. */
class EscalationStateTest {
  private static final AlarmTable TABLE = AlarmTableReader.builtIn();
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  private static final AlarmId DEAD =
      new AlarmId(AlarmKind.HEATER_WITHOUT_EFFECT, "storage", "storage-heater");
  private static final EscalationLine LINE =
      new EscalationLine(
          List.of(
              new Person("Ada", EnumSet.allOf(Priority.class), LocalTime.of(7, 0), List.of("mail")),
              new Person("Ben", EnumSet.of(Priority.DIGEST), LocalTime.of(18, 0), List.of("mail")),
              new Person("Cleo", EnumSet.of(Priority.WAKE), LocalTime.of(7, 0), List.of("push"))),
          Duration.ofMinutes(15),
          Duration.ofMinutes(60));

  /** Two in the morning on the farm. */
  private Instant now = Instant.parse("2026-12-01T01:00:00Z");

  private long seconds;
  private final Set<Finding> findings = new HashSet<>();
  private Alarms alarms = Alarms.NONE;
  private EscalationState rota = EscalationState.EMPTY;
  private final List<String> told = new ArrayList<>();

  private void pass(Duration time) {
    for (long left = time.toMinutes(); left > 0; left--) {
      now = now.plusSeconds(60);
      seconds += 60;
      alarms = alarms.after(facts(), TABLE, seconds);
      rota = rota.after(alarms, TABLE, LINE, ZONE, now);
      rota.errands().forEach(e -> told.add(e.person() + " " + e.occasion()));
    }
  }

  private ShedFacts facts() {
    return new ShedFacts(
        List.of(
            new RoomFacts(
                "storage",
                EnumSet.of(OutputKind.HEATER),
                new Range(new Limits(10_000, 15_000), new Limits(50_000, 70_000)),
                12_000,
                12_000,
                60_000,
                4_000,
                12_000,
                10_000,
                -800,
                35_000,
                95,
                true,
                findings,
                EnumSet.of(AlarmKind.CHILLING))),
        Set.of());
  }

  private void heaterDies() {
    findings.add(new Finding(AlarmKind.HEATER_WITHOUT_EFFECT, "storage-heater"));
  }

  @Test
  void firstInLineIsCalled_thenTheNext_thenAllAreReminded() {
    heaterDies();
    pass(Duration.ofMinutes(1));
    assertThat(told).containsExactly("Ada CALL");
    pass(Duration.ofMinutes(15));
    assertThat(told).containsExactly("Ada CALL", "Cleo NEXT_IN_LINE");
    pass(Duration.ofMinutes(60));
    assertThat(told).endsWith("Ada REMINDER", "Cleo REMINDER");
  }

  @Test
  void onceAcknowledged_nobodyElseIsWoken_andThoseWhoWereHearThatItIsOver() {
    heaterDies();
    pass(Duration.ofMinutes(5));
    alarms = alarms.acknowledge(DEAD);
    rota = rota.after(alarms, TABLE, LINE, ZONE, now);
    pass(Duration.ofHours(3));
    assertThat(told).containsExactly("Ada CALL");
    findings.clear();
    pass(Duration.ofMinutes(40));
    assertThat(told).containsExactly("Ada CALL", "Ada ALL_CLEAR");
    assertThat(rota.calls()).isEmpty();
  }

  @Test
  void whatCanWait_isInEachDigestOnce_andWakesNobody() {
    findings.add(new Finding(AlarmKind.BATTERY_LOW, "barn"));
    pass(Duration.ofHours(4));
    assertThat(told).isEmpty();
    pass(Duration.ofHours(1));
    assertThat(told).containsExactly("Ada DIGEST");
    pass(Duration.ofDays(3));
    assertThat(told).containsExactly("Ada DIGEST", "Ben DIGEST");
    assertThat(rota.forDigest()).isEmpty();
  }

  @Test
  void aDayWithoutNews_hasNoDigest() {
    pass(Duration.ofDays(2));
    assertThat(told).isEmpty();
  }

  @Test
  void aCallReads_where_what_sinceWhen_howBad_whatToDo() {
    heaterDies();
    pass(Duration.ofMinutes(1));
    Notice notice =
        new NoticeText(TABLE, "Hollin Bank Farm", "http://shed.example/alarms")
            .of(
                rota.errands().get(0),
                rota,
                new Judgement(alarms, facts(), now, 0),
                now.plusSeconds(60).atZone(ZONE));
    assertThat(notice.person()).isEqualTo("Ada");
    assertThat(notice.subject())
        .isEqualTo("Hollin Bank Farm, Room storage: The heater runs and nothing warms");
    assertThat(notice.text())
        .startsWith(
            """
            Room storage: The heater runs and nothing warms (storage-heater), since 02:01.
            The room falls below 10 C at about 03:35.
            What to do: Shut door and vent. See whether the heater's breaker\
            """)
        .endsWith("\n\nhttp://shed.example/alarms");
  }
}
