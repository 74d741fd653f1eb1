package rindward.controller.fault;

import java.nio.file.Path;

/**
 * A fault and the scenario that shows what comes of it.
 *
 * @param name for the test report
 */
record Fault(String name, Scenario scenario) {
  /** Breaks something, asserts the bound, and tells what was seen. */
  @FunctionalInterface
  interface Scenario {
    FaultRow play(Path folder) throws Exception;
  }
}
