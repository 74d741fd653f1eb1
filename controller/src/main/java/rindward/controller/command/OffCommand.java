package rindward.controller.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import rindward.controller.daemon.BoardLock;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.hardware.wired.WiredBoard;

/**
 * {@code off}: switches everything off when the daemon could not, because it was killed. Each
 * output by itself, so that one that fails costs no other.
 */
@Command(
    name = "off",
    description = {
      "Switch every output off, without the daemon: for a service that was killed.",
      "Says what may still be on."
    },
    footer = {"", "Example:", "  rindward off --settings /etc/rindward/rindward.toml"})
final class OffCommand implements Callable<Integer> {
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  @Spec private CommandSpec spec;
  @Mixin private SettingsOption settingsOption = new SettingsOption();

  @Override
  public Integer call() {
    Optional<Settings> read = settingsOption.read(spec);
    if (read.isEmpty()) {
      return Main.WRONG_USAGE;
    }
    Settings settings = read.get();
    if (settings.isSimulated()) {
      return say("Everything in these settings is simulated: there is nothing to switch off.");
    }
    try (@Nullable BoardLock ours = BoardLock.take(settings.store()).orElse(null)) {
      if (ours == null) {
        return complain("The daemon runs this shed and would switch on again; stop it first.");
      }
      return allOff(settings);
    } catch (IOException e) {
      // A full or broken disk is no reason to leave a heater on.
      return allOff(settings);
    }
  }

  private int allOff(Settings settings) {
    RealBoard board = RealBoard.of(settings, Time.system());
    int exit = Main.FINE;
    for (OutputSetting output : settings.outputs()) {
      try {
        off(board, output);
        say("Output " + output.name() + " is off (" + output.driver().place() + ").");
      } catch (IOException | RuntimeException e) {
        exit = complain("Output " + output.name() + " may still be on: " + e.getMessage());
      }
    }
    return exit;
  }

  private static void off(RealBoard board, OutputSetting output) throws IOException {
    try (WiredBoard opened = board.openOutput(output)) {
      opened.relay(output.name()).set(false);
      if (!opened.sayAll(PATIENCE)) {
        throw new IOException(opened.brokerTrouble());
      }
    }
  }

  private int say(String sentence) {
    return print(spec.commandLine().getOut(), sentence, Main.FINE);
  }

  private int complain(String sentence) {
    return print(spec.commandLine().getErr(), sentence, Main.NOT_WELL);
  }

  private static int print(PrintWriter to, String sentence, int exit) {
    to.println(sentence);
    to.flush();
    return exit;
  }
}
