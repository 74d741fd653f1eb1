package rindward.controller.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import rindward.controller.keeping.LossRates.Fruits;

/**
 * 150 rats of 50 litters (Mantel, Bohidar and Ciminera 1977, Cancer Research 37: 3863), against
 * what R 4.2.2 makes of them with survival 3.5.3.
 */
class LossRatesTest {
  private static final Offset<Double> AS_PRINTED = within(5e-8);

  @Test
  void publishedLitters_areAgreedWith() {
    Map<String, Double> expected = new HashMap<>();
    for (String line : lines("clustered-survival-expected.csv")) {
      int comma = line.lastIndexOf(',');
      expected.put(line.substring(1, comma - 1), Double.parseDouble(line.substring(comma + 1)));
    }
    LossRates rates = LossRates.of(litters()).orElseThrow();
    assertThat(rates.logRatio())
        .isCloseTo(expected.get("Cox log hazard ratio (Breslow)"), AS_PRINTED);
    assertThat(rates.modelError()).isCloseTo(expected.get("its model standard error"), AS_PRINTED);
    assertThat(rates.lotError())
        .isCloseTo(expected.get("its standard error robust to litters"), AS_PRINTED);
    assertThat(rates.z()).isCloseTo(expected.get("robust z"), AS_PRINTED);
    assertThat(rates.p().value()).isCloseTo(expected.get("robust p"), AS_PRINTED);
  }

  @Test
  void groupThatLostNothing_hasNoRatio() {
    List<KeptLot> sound = List.of(new KeptLot("", List.of(new Fate(90, 12, Ending.STILL_SOUND))));
    List<KeptLot> lost = List.of(new KeptLot("", List.of(new Fate(50, 12, Ending.LOST))));
    assertThat(LossRates.between(sound, lost)).isEmpty();
  }

  private static List<Fruits> litters() {
    return lines("clustered-survival-data.csv").stream()
        .map(line -> line.split(",", -1))
        .map(
            cells ->
                new Fruits(
                    cells[0],
                    cells[1].equals("1"),
                    new Fate(
                        Integer.parseInt(cells[2]),
                        1,
                        cells[3].equals("1") ? Ending.LOST : Ending.STILL_SOUND)))
        .toList();
  }

  private static List<String> lines(String file) {
    try (InputStream in =
        Objects.requireNonNull(LossRatesTest.class.getResourceAsStream(file), file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
