package rindward.controller.command.lot;

import java.io.PrintWriter;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.FarmTime;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.command.base.LotLine;
import rindward.controller.command.base.Three;
import rindward.controller.command.base.VerdictAnswer;
import rindward.controller.crop.RateCurve;
import rindward.controller.judge.JudgedLots;
import rindward.controller.judge.SecondFruit;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Lot;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.store.Database;
import rindward.controller.variety.CupWorth;
import rindward.controller.variety.Grown;

/** {@code lot show}: what a lot has lived through. */
@Command(
    name = "show",
    description = "Show what one lot, or every lot, has lived through.",
    footer = {"", "Example:", "  rindward lot show --settings shed.toml KB1"})
final class LotShowCommand extends AskingCommand {
  @Parameters(
      arity = "0..1",
      paramLabel = "CODE",
      description = "Code of the lot; all if not given.")
  private @Nullable String code;

  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  /** The keys of {@code --json}. */
  record Answer(List<LotAnswer> lots) {}

  /** One lot; times in seconds, fractions kept; the air is added up to {@code asOf}. */
  record LotAnswer(
      String code,
      String crop,
      String variety,
      String place,
      int count,
      Instant harvestedAt,
      Instant asOf,
      @Nullable Instant curedAt,
      Three cureProgress,
      boolean cureOnlyTold,
      AccountAnswer curing,
      AccountAnswer keeping,
      FruitsAnswer fruits,
      VerdictAnswer verdict,
      String inATasting,
      List<String> tasted,
      @Nullable SecondFruit secondFruit,
      List<StatedEntry> said) {}

  @Override
  protected int answer(Farm farm, Database database) {
    if (code != null && !json && farm.lot(code).isEmpty() && farm.plan(code).isPresent()) {
      PrintWriter out = out();
      out.println(LotLine.of(farm.plan(code).get()));
      farm.about(code)
          .forEach(
              recorded ->
                  out.println("  " + StatedEntry.of(recorded).line(farm.settings().zone())));
      out.flush();
      return ExitCode.FINE;
    }
    List<Lot> lots = code == null ? List.copyOf(farm.lots().all()) : List.of(lot(farm, code));
    JudgedLots judged = farm.judged(database);
    List<LotAnswer> answers = new ArrayList<>();
    for (Lot lot : lots) {
      Offer offer = judged.offer(lot).orElseThrow(() -> unknownType(lot));
      answers.add(answer(offer, judged, farm));
    }
    if (json) {
      JsonOutput.print(out(), new Answer(answers));
    } else {
      print(farm, answers);
    }
    return ExitCode.FINE;
  }

  private ParameterException unknownType(Lot lot) {
    return wrong(
        "crop of lot "
            + lot.code()
            + " was '"
            + lot.crop()
            + "' but the crop guide has no type of that name; add it to the settings");
  }

  private static LotAnswer answer(Offer offer, JudgedLots judged, Farm farm) {
    Lot lot = offer.lot();
    Grown grown = new Grown(lot, offer.crop(), offer.lived());
    LotAccount account = offer.lived().account();
    return new LotAnswer(
        lot.code(),
        lot.crop(),
        lot.variety(),
        lot.place(),
        lot.count(),
        lot.harvestedAt(),
        judged.asOf(lot),
        account.curedAt(),
        Three.of(account.cureProgress(), RateCurve.WHOLE),
        offer.lived().isCureOnlyTold(),
        AccountAnswer.of(account.curing()),
        AccountAnswer.of(account.keeping()),
        FruitsAnswer.of(lot.fruits()),
        VerdictAnswer.of(offer.verdict()),
        CupWorth.of(grown).words(),
        new TasteLines(grown, judged.tasted(), farm.settings().zone()).lines(),
        SecondFruit.of(lot, judged).orElse(null),
        farm.about(lot.code()).stream().map(StatedEntry::of).toList());
  }

  private void print(Farm farm, List<LotAnswer> answers) {
    PrintWriter out = out();
    ZoneId zone = farm.settings().zone();
    for (LotAnswer lot : answers) {
      out.println(LotLine.of(lot(farm, lot.code())));
      out.println("  verdict  " + lot.verdict().words());
      lot.verdict().lines(zone).forEach(line -> out.println("           " + line));
      out.println("  as of    " + FarmTime.words(lot.asOf(), zone));
      if (!lot.cureOnlyTold()) {
        out.printf(
            Locale.ROOT,
            "  cure     %.0f %%%s%n",
            100 * lot.cureProgress().measured(),
            lot.curedAt() == null ? "" : ", done at " + FarmTime.words(lot.curedAt(), zone));
        row(out, "curing", lot.curing());
      }
      row(out, "keeping", lot.keeping());
      if (code != null) {
        out.println("  tasting  " + lot.inATasting());
        lot.tasted().forEach(taste -> out.println("  tasted   " + taste));
        SecondFruit second = lot.secondFruit();
        if (second != null) {
          out.println("  next     " + second.sentence());
          out.println("           " + second.ifRipe());
          out.println("           " + second.ifUnripe());
          out.println("           Plan it: " + planned(second));
        }
        lot.said().forEach(said -> out.println("  " + said.line(zone)));
      }
    }
    out.flush();
  }

  private static String planned(SecondFruit second) {
    String tasters =
        second.tasters().isEmpty()
            ? " --taster NAME"
            : second.tasters().stream()
                .map(taster -> " --taster '" + taster + "'")
                .collect(Collectors.joining());
    return "rindward panel plan --settings shed.toml '"
        + second.name()
        + "'"
        + second.samples().stream()
            .map(sample -> " --sample " + sample.name())
            .collect(Collectors.joining())
        + tasters;
  }

  private static void row(PrintWriter out, String stage, AccountAnswer account) {
    if (account.elapsedSeconds() > 0) {
      out.printf(
          Locale.ROOT,
          "  %-8s in range %.1f h (certain %.1f, possible %.1f) of %.1f h; unknown %.1f h%n",
          stage,
          account.inRange().measured() / 3600,
          account.inRange().certain() / 3600,
          account.inRange().possible() / 3600,
          account.elapsedSeconds() / 3600,
          account.unknownSeconds() / 3600);
    }
  }
}
