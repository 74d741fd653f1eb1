package rindward.controller.command.lot;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.IntervalArgument;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.crop.Days;
import rindward.controller.journal.Entry;
import rindward.controller.journal.FieldDay;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.hardware.Thousandths;

/** {@code lot note}: how ripe it was, what frost it saw, or anything worth remembering. */
@Command(
    name = "note",
    description =
        "Note how ripe a lot was when it was picked, a frost, or anything else; of a plot that is"
            + " only planned, its first flower, a tagged fruit, or anything else.",
    footer = {
      "",
      "Examples:",
      "  rindward lot note --settings shed.toml K4T 'grew on the wet side'",
      "  rindward lot note --settings shed.toml K4T --sign seeds-flat --fruits 1",
      "  rindward lot note --settings shed.toml K4T --set-on 2026-08-08",
      "  rindward lot note --settings shed.toml K4T --first-flower 2026-07-20",
      "  rindward lot note --settings shed.toml K4T --off-type 'pale and pear-shaped'",
      "  rindward lot note --settings shed.toml K4T --frost -1.5 --minutes 90 --covered"
    })
final class LotNoteCommand extends SayingCommand {
  @Parameters(index = "0", paramLabel = "CODE", description = "Code of the lot.")
  private String code = "";

  @Parameters(index = "1", arity = "0..1", paramLabel = "TEXT", description = "In your words.")
  private @Nullable String text;

  @Option(
      names = "--sign",
      description = "What was seen of its ripeness: ${COMPLETION-CANDIDATES}.")
  private @Nullable RipenessSign sign;

  @Option(
      names = "--days",
      paramLabel = "LOW..HIGH",
      converter = IntervalArgument.class,
      description = "Days after fruit set it stands for; what it usually does if not given.")
  private IntervalArgument.@Nullable Interval days;

  @Option(
      names = "--set-on",
      paramLabel = "DAY",
      description = "Day of fruit set on the tag, such as 2026-08-08.")
  private @Nullable LocalDate setOn;

  @Option(
      names = "--first-flower",
      paramLabel = "DAY",
      description = "Day on which the first female flower opened.")
  private @Nullable LocalDate firstFlower;

  @Option(
      names = "--off-type",
      paramLabel = "TEXT",
      description = "How the fruits differ from what the label says; sets the lot apart.")
  private @Nullable String offType;

  @Option(names = "--fruits", description = "In how many fruits it was seen; all if not given.")
  private int fruits;

  @Option(
      names = "--frost",
      paramLabel = "LOW",
      description = "Lowest air temperature of a frost, degrees C.")
  private @Nullable Double frostC;

  @Option(names = "--minutes", description = "How long the frost lasted.")
  private int minutes;

  @Option(names = "--covered", description = "The fruits lay under leaves or a cloth.")
  private boolean covered;

  @Option(names = "--water-soaked", description = "The rind looked water-soaked afterwards.")
  private boolean waterSoaked;

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    String lot = Farm.code(code);
    List<Entry> entries = new ArrayList<>();
    if (firstFlower != null) {
      entries.add(new FieldDayNoted(lot, FieldDay.FIRST_FLOWER, firstFlower, fruits, at));
    }
    if (setOn != null && farm.lot(code).isEmpty()) {
      entries.add(new FieldDayNoted(lot, FieldDay.FRUIT_SET, setOn, fruits, at));
    } else if (setOn != null) {
      int age = ageAtHarvest(farm, setOn);
      entries.add(new RipenessNoted(lot, RipenessSign.TAGGED_SET, age, age, fruits, at));
    }
    if (sign != null) {
      Days range = range(sign);
      entries.add(new RipenessNoted(lot, sign, range.low(), range.high(), fruits, at));
    }
    if (frostC != null) {
      entries.add(new FrostNoted(lot, Thousandths.of(frostC), minutes, covered, waterSoaked, at));
    }
    if (offType != null) {
      entries.add(new OffTypeNoted(lot, offType, at));
    }
    if (text != null) {
      entries.add(new Noted(lot, text, at));
    }
    if (entries.isEmpty()) {
      throw wrong(
          "Say what to note: a text, --sign, --set-on, --first-flower, --off-type or --frost");
    }
    return entries;
  }

  private int ageAtHarvest(Farm farm, LocalDate set) {
    LocalDate harvested =
        LocalDate.ofInstant(lot(farm, code).harvestedAt(), farm.settings().zone());
    if (set.isAfter(harvested)) {
      throw wrong("--set-on was '" + set + "' but the lot was harvested on " + harvested);
    }
    return Math.toIntExact(ChronoUnit.DAYS.between(set, harvested));
  }

  private Days range(RipenessSign seen) {
    if (days != null) {
      return new Days((int) Math.max(0, days.low()), (int) Math.max(0, days.high()));
    }
    return seen.usual()
        .orElseThrow(() -> wrong("--days was not given but it must be, for " + seen));
  }
}
