package rindward.controller.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every fault of the safety page, played; and the page says what was seen. */
class FaultTableScenarioTest {
  @TempDir private Path folder;

  @TestFactory
  Stream<DynamicTest> everyFaultKeepsItsBound_andThePageSaysSo() {
    List<Fault> faults = FaultTable.faults();
    Map<String, FaultRow> rows = new ConcurrentHashMap<>();
    List<DynamicTest> tests = new ArrayList<>();
    for (Fault fault : faults) {
      tests.add(
          DynamicTest.dynamicTest(
              fault.name(),
              () ->
                  rows.put(
                      fault.name(),
                      fault.scenario().play(Files.createTempDirectory(folder, "shed")))));
    }
    tests.add(
        DynamicTest.dynamicTest(
            "the page is what was seen; FaultTable writes it anew",
            () -> {
              assumeTrue(rows.size() == faults.size(), "not every fault could be played here");
              assertThat(FaultTable.onThePage())
                  .isEqualTo(
                      FaultTable.print(faults.stream().map(f -> rows.get(f.name())).toList()));
            }));
    return tests.stream();
  }
}
