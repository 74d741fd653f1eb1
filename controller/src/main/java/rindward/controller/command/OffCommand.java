package rindward.controller.command;

import java.io.IOException;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
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
final class OffCommand extends ShedCommand {
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  @Override
  int on(Settings settings) {
    if (settings.isSimulated()) {
      return say(
          "Everything in these settings is simulated: there is nothing to switch off.", Main.FINE);
    }
    try (@Nullable BoardLock ours = BoardLock.take(settings.store()).orElse(null)) {
      if (ours == null) {
        return complain(
            "The daemon runs this shed and would switch on again; stop it first.", Main.NOT_WELL);
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
        say("Output " + output.name() + " is off (" + output.driver().place() + ").", exit);
      } catch (IOException | RuntimeException e) {
        exit =
            complain(
                "Output " + output.name() + " may still be on: " + e.getMessage(), Main.NOT_WELL);
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
}
