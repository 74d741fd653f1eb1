package rindward.controller.diagnosis;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.AlarmRow;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Finding;
import rindward.controller.alarm.Priority;
import rindward.controller.alarm.RoomFacts;
import rindward.controller.alarm.ShedFacts;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.hardware.OutputKind;

/**
 * A storage room at 12.5 C and 60 % in which all is well on a cold night, until a test says
 * otherwise; its fruit chills below 10 C. Also small tables that do not depend on the one we ship.
 */
public final class Room {
  public static final String NAME = "storage";

  public int coldest = 12_500;
  public int warmest = 12_700;
  public int humidity = 60_000;
  public int dewPoint = 5_000;
  public int fruit = 12_500;
  public int chilling = 10_000;
  public int freezing = -800;
  public int minutesToChilling = RoomFacts.NOT_FORECAST;
  public boolean coldOutside = true;
  public Limits wanted = new Limits(10_000, 15_000);
  public final Set<Finding> findings = new HashSet<>();
  public final Set<AlarmKind> accepted = EnumSet.noneOf(AlarmKind.class);
  public final Set<Finding> shedFindings = new HashSet<>();

  public ShedFacts facts() {
    RoomFacts room =
        new RoomFacts(
            NAME,
            EnumSet.of(OutputKind.HEATER, OutputKind.EXHAUST),
            new Range(wanted, new Limits(50_000, 70_000)),
            coldest,
            warmest,
            humidity,
            dewPoint,
            fruit,
            chilling,
            freezing,
            35_000,
            minutesToChilling,
            coldOutside,
            findings,
            accepted);
    return new ShedFacts(List.of(room), shedFindings);
  }

  public static AlarmId alarm(AlarmKind kind) {
    return AlarmId.of(kind, NAME);
  }

  /** A table in which every kind takes a minute to come, two to go, and half a degree. */
  public static AlarmTable table(AlarmRow... own) {
    Map<AlarmKind, AlarmRow> rows = new EnumMap<>(AlarmKind.class);
    for (AlarmKind kind : AlarmKind.values()) {
      rows.put(kind, row(kind, Priority.DIGEST));
    }
    for (AlarmRow row : own) {
      rows.put(row.kind(), row);
    }
    return new AlarmTable(rows);
  }

  public static AlarmRow row(AlarmKind kind, Priority priority, AlarmKind... suppresses) {
    return new AlarmRow(
        kind, "", priority, 60, 120, 500, false, false, Set.of(suppresses), "", "", "", Map.of());
  }

  public static AlarmRow latching(AlarmKind kind) {
    return new AlarmRow(
        kind, "", Priority.WAKE, 60, 120, 500, true, false, Set.of(), "", "", "", Map.of());
  }

  public static AlarmRow quietDuringWork(AlarmKind kind) {
    return new AlarmRow(
        kind, "", Priority.DIGEST, 60, 120, 500, false, true, Set.of(), "", "", "", Map.of());
  }
}
