package rindward.controller.mixed;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A published data set and what lme4 makes of it: {@code mixed-model-data.csv} and {@code
 * mixed-model-expected.csv} (R 4.2.2, lme4 1.1.31; the publications are named in the test).
 */
final class PublishedDesign {
  final List<String> a = new ArrayList<>();
  final List<String> b = new ArrayList<>();
  final List<Double> x = new ArrayList<>();
  private final List<Double> y = new ArrayList<>();

  static PublishedDesign of(String set) {
    PublishedDesign design = new PublishedDesign();
    for (String[] cells : lines("mixed-model-data.csv")) {
      if (cells[0].equals(set)) {
        design.a.add(cells[2]);
        design.b.add(cells[3]);
        design.x.add(cells[4].isEmpty() ? 0 : Double.parseDouble(cells[4]));
        design.y.add(Double.parseDouble(cells[5]));
      }
    }
    return design;
  }

  /** Leaves out the rows 3, 10, 17 and so on. */
  PublishedDesign unbalanced() {
    PublishedDesign fewer = new PublishedDesign();
    for (int row = 0; row < y.size(); row++) {
      if ((row + 1) % 7 != 3) {
        fewer.a.add(a.get(row));
        fewer.b.add(b.get(row));
        fewer.x.add(x.get(row));
        fewer.y.add(y.get(row));
      }
    }
    return fewer;
  }

  /** Returns values by "quantity|level". */
  static Map<String, Double> expected(String set) {
    Map<String, Double> values = new HashMap<>();
    for (String[] cells : lines("mixed-model-expected.csv")) {
      if (cells[0].equals(set)) {
        values.put(cells[2] + "|" + cells[3], Double.parseDouble(cells[4]));
      }
    }
    return values;
  }

  double[] y() {
    return y.stream().mapToDouble(Double::doubleValue).toArray();
  }

  double[] x() {
    return x.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Numbers names in the order in which they come. */
  static Map<String, Integer> numbered(List<String> names) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    names.forEach(name -> numbers.putIfAbsent(name, numbers.size()));
    return numbers;
  }

  static int[] levels(List<String> names) {
    Map<String, Integer> numbers = numbered(names);
    return names.stream().mapToInt(numbers::get).toArray();
  }

  /** Names what two factors make together. */
  List<String> both() {
    List<String> names = new ArrayList<>();
    for (int row = 0; row < a.size(); row++) {
      names.add(a.get(row) + ":" + b.get(row));
    }
    return names;
  }

  private static List<String[]> lines(String file) {
    try (InputStream in = PublishedDesign.class.getResourceAsStream(file)) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      List<String[]> lines = new ArrayList<>();
      text.lines().skip(1).forEach(line -> lines.add(cells(line)));
      return lines;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String[] cells(String line) {
    String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
    for (int i = 0; i < cells.length; i++) {
      cells[i] = cells[i].replace("\"", "");
    }
    return cells;
  }
}
