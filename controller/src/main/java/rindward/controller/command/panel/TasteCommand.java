package rindward.controller.command.panel;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.CutFruitOptions;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.journal.Entry;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Used;
import rindward.controller.judge.JudgedLots;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Stop;
import rindward.controller.tasting.Use;
import rindward.controller.tasting.design.Blinding;

/** {@code taste}: a fruit was cut in the kitchen. */
@Command(
    name = "taste",
    description =
        "Say in a few words how a fruit of a lot ate. It is not blind, and counts little beside a"
            + " panel; but it counts.",
    footer = {
      "",
      "Examples:",
      "  rindward taste --settings shed.toml K4T --seeds full --liking 8 --good-for pie,soup",
      "  rindward taste --settings shed.toml K4T --seeds flat --liquid 'watery, no flavour'",
      "  rindward taste --settings shed.toml K4T --found bitter"
    })
public final class TasteCommand extends SayingCommand {
  @Parameters(index = "0", paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Parameters(index = "1", arity = "0..1", paramLabel = "WORD", description = "In your words.")
  private String word = "";

  @Option(names = "--fruit", paramLabel = "TAG", description = "Tag of the fruit, if it had one.")
  private @Nullable String fruit;

  @Option(
      names = "--liking",
      description = "1 (dislike extremely) over 5 (neither) to 9 (like extremely).")
  private @Nullable Integer liking;

  @Option(names = "--wet", description = "1 (dry and mealy) to 5 (wet).")
  private @Nullable Integer moistness;

  @Option(
      names = "--good-for",
      split = ",",
      description = "What it is good for: ${COMPLETION-CANDIDATES}.")
  private List<Use> goodFor = List.of();

  @Option(names = "--eaten", description = "It is gone now: take one fruit out of the lot too.")
  private boolean eaten;

  @Mixin private CutFruitOptions cut = new CutFruitOptions();

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    String lot = Farm.code(code);
    List<Entry> entries = new ArrayList<>();
    entries.add(new KitchenTasted(lot, fruit, cut.seen(), liking, moistness, goodFor, word, at));
    if (eaten) {
      entries.add(new Used(lot, 1, Purpose.KITCHEN, at));
    }
    return entries;
  }

  @Override
  protected List<String> warnings(
      Farm before, Farm after, JudgedLots judged, List<? extends Entry> said) {
    Lot lot = lot(after, code);
    List<String> told =
        new ArrayList<>(
            after
                .crop(lot)
                .flatMap(crop -> Stop.of(lot, crop))
                .map(Stop::sentences)
                .orElse(List.of()));
    told.add(Blinding.OPEN.sentence());
    return told;
  }
}
