package rindward.controller.command.shed;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rindward.controller.command.base.AccuracyArgument;
import rindward.controller.command.base.AccuracyArgument.PlusMinus;
import rindward.controller.command.base.DurationArgument;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.command.base.Units;
import rindward.controller.crop.Crop;
import rindward.controller.crop.Range;
import rindward.controller.exchange.Recording;
import rindward.controller.exchange.RecordingException;
import rindward.controller.exchange.RecordingReader;
import rindward.controller.exchange.RejectedRow;
import rindward.controller.ledger.Account;
import rindward.controller.ledger.Accuracy;
import rindward.controller.ledger.BoundedTotal;
import rindward.controller.ledger.CureCounter;
import rindward.controller.ledger.RangeCounter;
import rindward.controller.ledger.SampleHold;
import rindward.hardware.Thousandths;

/** {@code replay}: the account of a recording made by any logger. */
@Command(
    name = "replay",
    description = {
      "Say how long the air of a recording was right, and what a crop would have cured in it.",
      "Ends with 1 if more than a tenth of the rows cannot be read, with 2 if none can."
    },
    footer = {
      "",
      "Examples:",
      "  rindward replay shed.csv --crop butternut --stage keep --accuracy 0.3,2",
      "  rindward replay probes.csv --columns time=2,temperature=5,humidity=6 --where 4=1 \\",
      "      --time epoch-millis --temperature 20.5..21 --humidity 40..45 --accuracy 0.3,2 --json"
    })
public final class ReplayCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "LOG.csv", description = "The recording, UTF-8 text, one row a line.")
  private Path file = Path.of("");

  @Mixin private RecordingOptions recorded = new RecordingOptions();

  @Mixin private RangeOptions asked = new RangeOptions();

  @Option(
      names = "--accuracy",
      paramLabel = "DEGREES,PERCENT",
      converter = AccuracyArgument.class,
      defaultValue = "0,0",
      description = "How far the probe may be off, plus or minus; if not given ${DEFAULT-VALUE}.")
  private PlusMinus plusMinus = new PlusMinus(0, 0);

  @Option(
      names = "--hold",
      paramLabel = "TIME",
      converter = DurationArgument.class,
      defaultValue = "5m",
      description =
          "How long a row holds at most, as 90s, 5m or 2h; longer gaps are unknown. If not given"
              + " ${DEFAULT-VALUE}.")
  private Duration hold = Duration.ofMinutes(5);

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "With us, the recording, --temperature and --accuracy are in degrees F.")
  private Units units = Units.METRIC;

  @Option(names = "--json", description = "Answer as one JSON object, times in seconds.")
  private boolean json;

  @Override
  public Integer call() {
    Optional<Crop> crop;
    Range range;
    Recording recording;
    try {
      crop = asked.crop();
      range = asked.range(crop, units);
      recording = RecordingReader.read(file, recorded.format(units));
    } catch (RecordingException | IllegalArgumentException e) {
      throw wrong(String.valueOf(e.getMessage()));
    }
    report(recording);
    if (recording.rows() == 0) {
      throw wrong(file + " has no row that can be used");
    }
    Account account =
        RangeCounter.account(
            recording,
            range,
            accuracy(),
            recording.firstMillis(),
            recording.lastMillis(),
            hold.toMillis());
    print(recording, range, account, crop.map(type -> cureProgress(recording, type)));
    long rejected = recording.rejectedRows();
    return rejected * 10 > recording.rows() + rejected ? ExitCode.NOT_WELL : ExitCode.FINE;
  }

  private BoundedTotal cureProgress(Recording recording, Crop crop) {
    return crop.cure()
        .map(
            cure -> {
              CureCounter counter = new CureCounter(cure, accuracy(), BoundedTotal.ZERO);
              SampleHold.count(
                  recording,
                  recording.firstMillis(),
                  recording.lastMillis(),
                  hold.toMillis(),
                  counter);
              return counter.progress();
            })
        .orElse(BoundedTotal.ZERO);
  }

  private void report(Recording recording) {
    PrintWriter err = spec.commandLine().getErr();
    for (RejectedRow row : recording.rejected()) {
      err.println("line " + row.line() + ": " + row.sentence());
    }
    long more = recording.rejectedRows() - recording.rejected().size();
    if (more > 0) {
      err.println("and " + more + " more rows that cannot be read");
    }
    err.flush();
  }

  private void print(
      Recording recording, Range range, Account account, Optional<BoundedTotal> cureProgress) {
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonOutput.print(out, ReplayAnswer.of(recording, account, cureProgress));
    } else {
      new ReplayText(out, recorded.zone()).print(recording, question(range), account, cureProgress);
    }
  }

  private String question(Range range) {
    return String.format(
        Locale.ROOT,
        "%s against %s..%s %s and %s..%s %%",
        file.getFileName(),
        degrees(range.temperature().low()),
        degrees(range.temperature().high()),
        units.degrees(),
        Thousandths.toDouble(range.humidity().low()),
        Thousandths.toDouble(range.humidity().high()));
  }

  private double degrees(int milliC) {
    return Math.rint(units.fromCelsius(Thousandths.toDouble(milliC)) * 100) / 100;
  }

  private Accuracy accuracy() {
    double degreesC = units == Units.US ? plusMinus.degrees() / 1.8 : plusMinus.degrees();
    return new Accuracy(Thousandths.of(degreesC), Thousandths.of(plusMinus.percent()));
  }

  private ParameterException wrong(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }
}
