package rindward.controller.command.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Entry;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Recorded;
import rindward.controller.judge.JudgedLots;
import rindward.controller.judge.LotJudge;
import rindward.controller.ledger.History;
import rindward.controller.ledger.Run;
import rindward.controller.lot.Lot;
import rindward.controller.readiness.State;
import rindward.controller.settings.CropGuideReader;

/**
 * The demo's season hour by hour, with the air of two rooms that breathe: a verdict that was left
 * is not come back to, unless somebody said something of that lot in between.
 */
class SteadyVerdictsTest {
  private static final CropGuide GUIDE = CropGuideReader.builtIn();
  private static final Instant END = Instant.parse("2026-12-01T12:00:00Z");
  private static final int STEP_MILLIS = 3_600_000;
  private static final int DAYS = 100;

  private final List<Recorded> journal = new ArrayList<>();

  @Test
  void noVerdict_changesBackAndForth() {
    DemoFarm farm = new DemoFarm(END);
    List<DemoNotes.Note> told = new ArrayList<>(new DemoNotes(farm.start()).all());
    farm.deeds().forEach(deed -> told.add(new DemoNotes.Note(deed.day(), deed.entry())));
    told.sort(Comparator.comparing(note -> saidAt(farm, note)));
    Map<String, History> air =
        Map.of(
            "curing", room(farm.start(), 28_000, 1_500, 76_000),
            "storage", room(farm.start(), 12_500, 900, 62_000),
            "barn", room(farm.start(), 5_600, 0, 78_000));
    LotJudge judge =
        new LotJudge(
            GUIDE,
            STEP_MILLIS,
            place -> air.getOrDefault(place, (from, to, visit) -> {}),
            () -> List.copyOf(journal));

    Map<String, State> last = new HashMap<>();
    Map<String, Set<State>> left = new HashMap<>();
    List<String> flickers = new ArrayList<>();
    int next = 0;
    for (Instant now = farm.start();
        !now.isAfter(END.plus(Duration.ofDays(20)));
        now = now.plus(Duration.ofHours(1))) {
      while (next < told.size() && !saidAt(farm, told.get(next)).isAfter(now)) {
        Entry entry = told.get(next++).entry();
        journal.add(new Recorded(journal.size() + 1L, entry.at(), "Wren", entry));
        if (entry instanceof OfLot of) {
          left.remove(of.lot());
        }
      }
      JudgedLots judged = judge.judge(now);
      for (Lot lot : judged.told().lots().all()) {
        State state = judged.offer(lot).orElseThrow().verdict().state();
        State before = last.put(lot.code(), state);
        if (before != null && before != state) {
          Set<State> gone = left.computeIfAbsent(lot.code(), code -> new HashSet<>());
          gone.add(before);
          if (gone.contains(state)) {
            flickers.add(now + " " + lot.code() + ": " + before + ", then " + state + " again");
          }
        }
      }
    }
    assertThat(next).isEqualTo(told.size());
    assertThat(flickers).isEmpty();
  }

  private static Instant saidAt(DemoFarm farm, DemoNotes.Note note) {
    return farm.start().plus(Duration.ofDays(note.day()));
  }

  /** Air that swings with the day around what is asked, and a little with every sample. */
  private static History room(Instant start, int milliC, int swing, int milliPct) {
    int samples = (int) (DAYS * 86_400_000L / STEP_MILLIS);
    int[] temperature = new int[samples];
    int[] humidity = new int[samples];
    for (int i = 0; i < samples; i++) {
      double day = 2 * Math.PI * i * STEP_MILLIS / 86_400_000.0;
      temperature[i] = (int) (milliC + swing * Math.sin(day)) + i * 37 % 11 * 10;
      humidity[i] = (int) (milliPct - 3_000 * Math.sin(day)) + i * 53 % 17 * 50;
    }
    Run run = new Run(start.toEpochMilli(), STEP_MILLIS, samples, temperature, humidity);
    return (from, to, visit) -> visit.accept(run);
  }
}
