package rindward.controller.command.lot;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.command.base.WeightArgument;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Weighed;
import rindward.controller.judge.JudgedLots;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Warning;

/** {@code lot weigh}: fruits were put on a scale. */
@Command(
    name = "weigh",
    description = "Weigh one tagged fruit, or crates of a lot.",
    footer = {
      "",
      "Examples:",
      "  rindward lot weigh --settings shed.toml K4T --fruit 'tag 3' --weight 1.38kg",
      "  rindward lot weigh --settings shed.toml K4T --count 40 --weight 57.2kg --tare 3.8kg"
    })
final class LotWeighCommand extends SayingCommand {
  @Parameters(paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Option(
      names = "--weight",
      required = true,
      converter = WeightArgument.class,
      description = "What the scale shows, such as 1.4kg, 1400g or 3.1lb.")
  private int grossGrams;

  @Option(
      names = "--tare",
      converter = WeightArgument.class,
      description = "Of the empty crates; 0 if not given.")
  private int tareGrams;

  @Option(names = "--fruit", paramLabel = "TAG", description = "Tag of a single sample fruit.")
  private @Nullable String fruit;

  @Option(
      names = "--count",
      description = "Fruits on the scale; every sound one of the lot if not given.")
  private @Nullable Integer count;

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    int all = fruit == null ? lot(farm, code).fruits().sound() : 1;
    return List.of(
        new Weighed(
            Farm.code(code), fruit, count == null ? all : count, grossGrams, tareGrams, at));
  }

  @Override
  protected List<String> warnings(
      Farm before, Farm after, JudgedLots judged, List<? extends Entry> said) {
    Lot lot = lot(before, code);
    return said.stream()
        .map(entry -> Warning.of((Weighed) entry, lot))
        .flatMap(Optional::stream)
        .toList();
  }
}
