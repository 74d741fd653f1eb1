package rindward.controller.command.variety;

import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import rindward.controller.variety.VarietyName;

/** Which varieties a command is asked about. */
final class VarietyChoice {
  @Parameters(
      arity = "0..1",
      paramLabel = "VARIETY",
      description = "Name of the variety; all if not given.")
  private @Nullable String variety;

  @Option(names = "--crop", description = "Only of this type, by any of its names.")
  private @Nullable String crop;

  /**
   * Returns the varieties that are meant.
   *
   * @throws ParameterException if one was named and nothing of that name came in
   */
  List<VarietyName> of(Varieties varieties, CommandSpec spec) {
    List<VarietyName> names = varieties.named(variety, crop);
    if (names.isEmpty() && variety != null) {
      throw new ParameterException(
          spec.commandLine(), "VARIETY was '" + variety + "' but no lot of that variety came in");
    }
    return names;
  }
}
