package rindward.controller.command.panel;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.SayingCommand;
import rindward.controller.desk.DrawKey;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.judge.JudgedLots;
import rindward.controller.lot.Session;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.ServingOrders;
import rindward.controller.variety.CupWorth;

/** {@code panel plan}: what is to be compared, and who tastes. */
@Command(
    name = "plan",
    description =
        "Plan a tasting. Codes and serving orders are drawn by lot; more samples than one go holds"
            + " are spread over several, which share the check.",
    footer = {
      "",
      "Example:",
      "  rindward panel plan --settings shed.toml winter --sample K4T --sample R7A:1+2 --sample A3A"
          + " --taster Wren --taster Ash --twice K4T --method baked --oven 190"
    })
final class PanelPlanCommand extends SayingCommand {
  @Parameters(paramLabel = "NAME", description = "Name of the session.")
  private String name = "";

  @Option(
      names = "--sample",
      required = true,
      paramLabel = "CODE[:FRUIT+FRUIT]",
      description =
          "A lot, with the names of the one to three fruits that are cut; of two samples of one lot"
              + " each needs its own fruit.")
  private List<String> samples = List.of();

  @Option(names = "--taster", required = true, description = "Who tastes; once for each.")
  private List<String> tasters = List.of();

  @Option(names = "--check", paramLabel = "SAMPLE", description = "What every go shares.")
  private @Nullable String check;

  @Option(
      names = "--twice",
      paramLabel = "SAMPLE",
      description = "What is served twice, unknown to the tasters, to learn how steady they are.")
  private @Nullable String twice;

  @Option(names = "--warm-up", description = "What is tasted first, openly and unscored.")
  private @Nullable String warmUp;

  @Option(names = "--cups", description = "Most cups in one go, 3 to 8; 6 if not given.")
  private int cups = 6;

  @Option(
      names = "--main",
      paramLabel = "QUESTION",
      description =
          "The question that is compared first, such as sweetness; liking if not given. The others"
              + " are compared only if it finds a difference.")
  private @Nullable String main;

  @Option(
      names = "--blind",
      description = "How much the tasters may know: ${COMPLETION-CANDIDATES}; full if not given.")
  private Blinding blinding = Blinding.FULL;

  @ArgGroup(exclusive = false, heading = "%nHow all samples are made ready, alike:%n")
  private Kitchen kitchen = new Kitchen();

  /** What is the same for all samples. */
  static final class Kitchen {
    @Option(names = "--method", description = "Such as baked or steamed.")
    private String method = "";

    @Option(names = "--oven", paramLabel = "C", description = "Temperature of oven or pan.")
    private @Nullable Integer ovenC;

    @Option(names = "--cut", description = "Size and shape of the pieces.")
    private String cut = "";

    @Option(names = "--done-when", description = "How it is seen that a sample is done.")
    private String doneWhen = "";

    @Option(names = "--serve-at", paramLabel = "C", description = "Temperature at the table.")
    private @Nullable Integer servedAtC;

    @Option(names = "--part", description = "Part of the fruit it is cut from.")
    private String part = "";
  }

  @Override
  protected List<Entry> entries(Farm farm, Instant at) {
    List<Served> served = samples.stream().map(sample -> served(farm, sample)).toList();
    return List.of(
        new SessionPlanned(
            name,
            served,
            tasters,
            check == null ? null : sampleName(check),
            twice == null ? null : sampleName(twice),
            warmUp,
            cups,
            blinding,
            new Preparation(
                kitchen.method,
                kitchen.ovenC,
                kitchen.cut,
                kitchen.doneWhen,
                kitchen.servedAtC,
                kitchen.part),
            0,
            question(),
            DrawKey.fresh(),
            at));
  }

  @Override
  protected void tell(PrintWriter out, Farm after, List<? extends Entry> said) {
    Session session = after.session(name).orElseThrow();
    int goes = session.plan().flights().size();
    out.println(
        "Session "
            + name
            + ": "
            + samples.size()
            + " samples, "
            + tasters.size()
            + (tasters.size() == 1 ? " taster, " : " tasters, ")
            + goes
            + (goes == 1 ? " go." : " goes."));
    session.plan().orders().stream().map(ServingOrders::sentence).distinct().forEach(out::println);
  }

  @Override
  protected List<String> warnings(
      Farm before, Farm after, JudgedLots judged, List<? extends Entry> said) {
    return after.session(name).orElseThrow().planned().samples().stream()
        .map(Served::lot)
        .distinct()
        .flatMap(code -> after.lot(code).flatMap(judged::grown).stream())
        .map(grown -> grown.lot().code() + "  " + CupWorth.of(grown).words())
        .toList();
  }

  private @Nullable Attribute question() {
    return main == null
        ? null
        : Attribute.of(main)
            .orElseThrow(
                () -> wrong("--main was '" + main + "' but it must be a question of the sheet"));
  }

  private Served served(Farm farm, String sample) {
    String[] parts = sample.split(":", 2);
    String lot = lot(farm, parts[0]).code();
    List<String> fruits =
        parts.length == 1 ? List.of("1") : Arrays.asList(parts[1].split("\\+", -1));
    return new Served(sampleName(sample), lot, fruits);
  }

  /** Returns the lot's code as it is painted, with the fruits as they were typed. */
  private static String sampleName(String sample) {
    String[] parts = sample.split(":", 2);
    return parts.length == 1 ? Farm.code(parts[0]) : Farm.code(parts[0]) + ":" + parts[1];
  }
}
