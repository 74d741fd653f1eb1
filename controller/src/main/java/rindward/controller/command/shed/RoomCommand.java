package rindward.controller.command.shed;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.IntervalArgument;
import rindward.controller.command.base.IntervalArgument.Interval;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.journal.Entry;
import rindward.controller.journal.RoomAsked;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.room.RoomRequests;
import rindward.hardware.Thousandths;

/** {@code room}: what a room is to be like from now on, without new settings or a restart. */
@Command(
    name = "room",
    description =
        "Say what air a room is to have from now on, let it rest, or go back to its settings. A"
            + " running daemon follows within a minute. Says what is asked of it if nothing is"
            + " given.",
    footer = {
      "",
      "Example:",
      "  rindward room store --settings shed.toml --temperature 10..13 --humidity 50..70"
    })
public final class RoomCommand extends SayingCommand {
  @Parameters(index = "0", paramLabel = "ROOM", description = "Name of the room.")
  private String name = "";

  @ArgGroup private @Nullable Wish wish;

  /** One of three. */
  static final class Wish {
    @ArgGroup(exclusive = false)
    private @Nullable Air air;

    @Option(names = "--rest", description = "Let the room rest, with everything off.")
    private boolean rests;

    @Option(names = "--as-set", description = "Go back to what the settings say.")
    private boolean asSet;
  }

  /** Both limits belong together. */
  static final class Air {
    @Option(
        names = "--temperature",
        required = true,
        paramLabel = "LOW..HIGH",
        converter = IntervalArgument.class,
        description = "C.")
    private Interval temperature = new Interval(0, 0);

    @Option(
        names = "--humidity",
        required = true,
        paramLabel = "LOW..HIGH",
        converter = IntervalArgument.class,
        description = "Percent.")
    private Interval humidity = new Interval(0, 0);

    @Option(
        names = "--cools-down-a-day",
        paramLabel = "K",
        description = "How fast the range comes down, 0.5 to 50; as the settings say if not given.")
    private @Nullable Double slide;
  }

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    Room room = room(farm);
    if (wish == null) {
      return List.of();
    }
    Air air = wish.air;
    if (air == null) {
      return List.of(new RoomAsked(room.name(), null, 0, wish.rests && !wish.asSet, at));
    }
    Double slide = air.slide;
    if (slide != null && !(slide >= 0.5 && slide <= 50)) {
      throw wrong("--cools-down-a-day was '" + slide + "' but it must be 0.5 to 50 K");
    }
    return List.of(
        new RoomAsked(
            room.name(),
            new Range(limits(air.temperature), limits(air.humidity)),
            slide == null ? 0 : Thousandths.of(slide),
            false,
            at));
  }

  @Override
  protected void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    Room room = room(after);
    RoomDemand demand =
        RoomDemand.of(
            room,
            RoomRequests.in(after.journal(), (by, least) -> true, after.now()).get(room.name()),
            after.lots(),
            Set.of(),
            after.settings().crops(),
            after.now());
    Range range = demand.range();
    if (range == null) {
      out.println("Room " + room.name() + " rests.");
      return;
    }
    out.printf(
        Locale.ROOT,
        "Room %s is to have %s C and %s %%%s.%n",
        room.name(),
        shown(range.temperature()),
        shown(range.humidity()),
        range.equals(room.range()) ? ", as its settings say" : "");
  }

  private Room room(Farm farm) {
    return farm.settings().rooms().stream()
        .filter(r -> r.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                wrong(
                    "ROOM was '"
                        + name
                        + "' but it must be one of the settings: "
                        + String.join(
                            ", ", farm.settings().rooms().stream().map(Room::name).toList())));
  }

  private static Limits limits(Interval interval) {
    return new Limits(Thousandths.of(interval.low()), Thousandths.of(interval.high()));
  }

  private static String shown(Limits limits) {
    return shown(limits.low()) + " to " + shown(limits.high());
  }

  private static String shown(int thousandths) {
    return String.valueOf(Thousandths.toDouble(thousandths)).replaceAll("\\.0$", "");
  }
}
