package rindward.controller.settings;

import java.util.List;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.hardware.wired.I2cDriver;
import rindward.hardware.wired.KernelDriver;
import rindward.hardware.wired.OneWireDriver;

/**
 * The lines of the board's header that its own buses use, after the Raspberry Pi documentation
 * (GPIO alternative functions; overlay w1-gpio). The lines of I2C bus 1 cannot be moved. The 1-Wire
 * bus and the serial console can be moved or switched off, which no settings file tells.
 */
final class BoardLines {
  private static final List<Integer> I2C_BUS_1 = List.of(2, 3);
  private static final int ONE_WIRE = 4;
  private static final List<Integer> CONSOLE = List.of(14, 15);

  private BoardLines() {}

  /** Tells whether a probe of these needs this line for itself, wherever else it might hang. */
  static boolean isOfI2c(int line, List<ProbeSetting> probes) {
    return I2C_BUS_1.contains(line) && probes.stream().anyMatch(BoardLines::isOnI2cBus1);
  }

  /** Tells whether a probe of these uses this line, unless its bus was moved. */
  static boolean isUsuallyOneWire(int line, List<ProbeSetting> probes) {
    return line == ONE_WIRE && probes.stream().anyMatch(p -> p.driver() instanceof OneWireDriver);
  }

  /** Tells whether the serial console uses this line, unless it was switched off. */
  static boolean isUsuallyConsole(int line) {
    return CONSOLE.contains(line);
  }

  private static boolean isOnI2cBus1(ProbeSetting probe) {
    return probe.driver() instanceof I2cDriver i2c && i2c.busNumber() == 1
        || probe.driver() instanceof KernelDriver kernel
            && kernel.device().matches("1-[0-9a-f]{4}");
  }
}
