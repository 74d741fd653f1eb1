package rindward.controller.command.shed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.link.ControlReport;
import rindward.controller.task.TaskState;

/**
 * How control of a shed is doing, from two of its reports: the keys of {@code health --json}, by
 * which a later run can tell what is no longer as it was.
 *
 * @param answers whether control was heard at all
 * @param ticks whether it looked at the rooms between the two
 * @param keeps whether what is measured reaches the disk
 * @param probes those that give values
 * @param silentProbes those that give none
 * @param outputs those that control has in its hands
 * @param trouble what does not go as it should, each in one sentence
 */
record Health(
    boolean answers,
    boolean ticks,
    boolean keeps,
    List<String> probes,
    List<String> silentProbes,
    List<String> outputs,
    List<String> trouble) {

  Health {
    probes = List.copyOf(probes);
    silentProbes = List.copyOf(silentProbes);
    outputs = List.copyOf(outputs);
    trouble = List.copyOf(trouble);
  }

  /**
   * @param first the earlier report; null when control was not heard
   * @param second the later one; null when nothing more was heard
   * @param silence why not, in one sentence
   */
  static Health of(
      @Nullable ControlReport first, @Nullable ControlReport second, @Nullable String silence) {
    if (first == null) {
      return new Health(
          false, false, false, List.of(), List.of(), List.of(), List.of(String.valueOf(silence)));
    }
    ControlReport last = second == null ? first : second;
    boolean ticks = last.snapshot().tick() > first.snapshot().tick();
    List<String> values = new ArrayList<>();
    List<String> silent = new ArrayList<>();
    last.probes().forEach(p -> (p.failure() == null ? values : silent).add(p.probe()));
    List<String> outputs =
        last.snapshot().rooms().stream()
            .flatMap(room -> room.room().outputs().values().stream())
            .map(output -> output.name())
            .toList();
    List<String> trouble = new ArrayList<>();
    if (!ticks) {
      trouble.add("Control answers but did not look at the rooms meanwhile.");
    }
    if (!last.store().isKeeping()) {
      trouble.add("The store is " + last.store().sentence() + ".");
    }
    last.tasks().stream()
        .filter(TaskState::isOverdue)
        .forEach(task -> trouble.add("The task " + task.task() + " fails: " + task.trouble()));
    return new Health(true, ticks, last.store().isKeeping(), values, silent, outputs, trouble);
  }

  /** Tells whether the shed is controlled and the record kept. */
  boolean isWell() {
    return answers && ticks && keeps;
  }

  /** Returns what was so before and is no longer, each in one sentence. */
  List<String> lostSince(Health before) {
    List<String> lost = new ArrayList<>();
    before.probes.stream()
        .filter(probe -> !probes.contains(probe))
        .forEach(probe -> lost.add("Probe " + probe + " gave values before, and gives none now."));
    before.outputs.stream()
        .filter(output -> !outputs.contains(output))
        .forEach(output -> lost.add("Output " + output + " was in control's hands before."));
    if (before.keeps && !keeps) {
      lost.add("What is measured reached the disk before.");
    }
    return lost;
  }

  /** Returns the sentences for a person. */
  List<String> sentences(Optional<Health> before) {
    List<String> said = new ArrayList<>(trouble);
    before.ifPresent(earlier -> said.addAll(lostSince(earlier)));
    return said;
  }
}
