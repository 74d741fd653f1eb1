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
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Planted;
import rindward.controller.judge.JudgedLots;
import rindward.controller.judge.Misfits;
import rindward.controller.lot.LotCodes;
import rindward.controller.room.Room;

/** {@code lot add}: a lot came in. */
@Command(
    name = "add",
    description =
        "Bring in a lot. A code of the plot plan brings its type and variety along; without a code"
            + " one is suggested.",
    footer = {
      "",
      "Examples:",
      "  rindward lot add --settings shed.toml --crop kabocha --place curing --count 40",
      "  rindward lot add --settings shed.toml K4T --place porch --count 12 --grade doubtful"
    })
final class LotAddCommand extends SayingCommand {
  @Parameters(
      arity = "0..1",
      paramLabel = "CODE",
      description = "Code of the lot, as painted on the crate.")
  private @Nullable String code;

  @Option(
      names = "--crop",
      description = "Type in the crop guide, by any of its names; the plan's if not given.")
  private @Nullable String crop;

  @Option(names = "--variety", description = "Name of the variety; the plan's if not given.")
  private @Nullable String variety;

  @Option(
      names = "--place",
      required = true,
      description = "Room, or any other place: field, porch, cellar ...")
  private String place = "";

  @Option(names = "--count", required = true, description = "How many fruits, bulbs or roots.")
  private int count;

  @Option(names = "--grade", description = "How ripe it looks: ripe, doubtful or green.")
  private @Nullable Grade grade;

  @Option(
      names = "--weight",
      converter = WeightArgument.class,
      description = "Of all of it, such as 51kg; may be weighed later.")
  private @Nullable Integer weightGrams;

  @Option(names = "--plot", description = "Where it grew; the plan's if not given.")
  private @Nullable String plot;

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    String painted = code == null ? suggested(farm) : Farm.code(code);
    Optional<Planted> plan = Optional.ofNullable(farm.lots().plans().get(painted));
    String type = crop == null ? plan.map(Planted::crop).orElse("") : farm.cropKey(crop);
    if (type.isEmpty()) {
      throw wrong("--crop was not given but it must be, for '" + painted + "' is in no plot plan");
    }
    return List.of(
        new Harvested(
            painted,
            type,
            variety == null ? plan.map(Planted::variety).orElse("") : variety,
            count,
            place,
            at,
            grade,
            weightGrams,
            plot == null ? plan.map(Planted::plot).orElse(null) : plot));
  }

  @Override
  protected List<String> warnings(
      Farm before, Farm after, JudgedLots judged, List<? extends Entry> said) {
    return new Misfits(after.settings().rooms().stream().map(Room::surroundings).toList())
        .told(judged, said.stream().map(entry -> lot(after, entry.subject())).toList(), place);
  }

  private String suggested(Farm farm) {
    return LotCodes.suggest(farm.lots().codes())
        .orElseThrow(() -> wrong("CODE was not given but every short code is taken: make one up"));
  }
}
