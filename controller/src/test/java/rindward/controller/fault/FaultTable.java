package rindward.controller.fault;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Prints what the scenarios found as the table of {@code hardware/SAFETY.md}. Run {@link #main} in
 * the controller's folder to write the page anew after the control has changed.
 */
final class FaultTable {
  static final Path PAGE = Path.of("../hardware/SAFETY.md");
  private static final String BEGIN = "<!-- fault table: printed by a test, do not edit -->\n";
  private static final String END = "<!-- end of fault table -->\n";

  private FaultTable() {}

  static List<Fault> faults() {
    List<Fault> all = new ArrayList<>();
    all.addAll(ProbeFaults.all());
    all.addAll(OutdoorFaults.all());
    all.addAll(OutputFaults.all());
    all.addAll(WaterFaults.all());
    all.addAll(RealPartFaults.all());
    all.addAll(SystemFaults.all());
    return all;
  }

  static String print(List<FaultRow> rows) {
    StringBuilder table = new StringBuilder();
    table.append(
        new FaultRow("fault", "what the shed does", "how soon", "what it reports", "when it ends")
            .markdown());
    table.append("\n| --- | --- | --- | --- | --- |\n");
    rows.forEach(row -> table.append(row.markdown()).append('\n'));
    return table.toString();
  }

  /** Returns the table that stands in the page. */
  static String onThePage() throws IOException {
    String page = Files.readString(PAGE);
    return page.substring(page.indexOf(BEGIN) + BEGIN.length(), page.indexOf(END));
  }

  /** Plays every fault and writes the page. */
  public static void main(String[] args) throws Exception {
    List<FaultRow> rows = new ArrayList<>();
    for (Fault fault : faults()) {
      rows.add(fault.scenario().play(Files.createTempDirectory("fault")));
    }
    String page = Files.readString(PAGE);
    int from = page.indexOf(BEGIN) + BEGIN.length();
    Files.writeString(
        PAGE, page.substring(0, from) + print(rows) + page.substring(page.indexOf(END)));
  }
}
