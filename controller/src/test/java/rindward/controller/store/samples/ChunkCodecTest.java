package rindward.controller.store.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rindward.controller.Any;
import rindward.controller.Seeded;
import rindward.controller.ledger.Run;
import rindward.hardware.Thousandths;

/** What goes to disk comes back, and costs what was promised. */
class ChunkCodecTest {

  record Sample(long second, int temperature, int humidity) {}

  private static Sample sample(Any any) {
    long second =
        any.yesOrNo()
            ? 1_700_000_000 + 10 * any.longBetween(0, 300)
            : any.longBetween(-200_000, 4_000_000_000L);
    return new Sample(second, value(any), value(any));
  }

  private static int value(Any any) {
    return any.yesOrNo() ? Thousandths.NONE : 10 * any.intBetween(-32767, 32767);
  }

  @Seeded
  void anySamplesInAnyOrderComeBackSortedAndTheLaterOfASecondCounts(Any any) {
    List<Sample> samples = any.list(0, 255, () -> sample(any));
    Samples collected = new Samples();
    var expected = new TreeMap<Long, Sample>();
    for (Sample s : samples) {
      collected.add(s.second, s.temperature, s.humidity);
      expected.put(s.second, s);
    }

    Samples back = new Samples();
    for (Run run : collected.runs()) {
      long first = run.startMillis() / 1000;
      ChunkCodec.decode(first, ChunkCodec.encode(first, List.of(run))).forEach(back::add);
    }

    assertThat(samplesOf(back.runs())).containsExactlyElementsOf(expected.values());
  }

  @Seeded
  void theRunsOfADayShareOneChunk(Any any) {
    List<Integer> secondsOfDay = any.list(1, 200, () -> any.intBetween(0, 86_399));
    long midnight = 20_000L * Samples.DAY_SECONDS;
    Samples day = new Samples();
    secondsOfDay.forEach(s -> day.add(midnight + s, 10 * (s % 1000), 50_000));
    List<Run> runs = day.runs();
    long first = runs.get(0).startMillis() / 1000;

    List<Run> back = ChunkCodec.decode(first, ChunkCodec.encode(first, runs));

    assertThat(samplesOf(back)).isEqualTo(samplesOf(runs));
    assertThat(back).hasSameSizeAs(runs);
  }

  @Seeded
  void damagedBytesAreRefusedOrReadButNeverEndless(Any any) {
    byte[] bytes = any.bytes(any.intBetween(0, 255));
    if (bytes.length > 0 && any.yesOrNo()) {
      bytes[0] = (byte) any.intBetween(1, 2); // damaged further on than in its version
    }
    try {
      assertThat(ChunkCodec.decode(0, bytes)).allMatch(run -> run.count() > 0);
    } catch (IllegalArgumentException refused) {
      assertThat(refused).hasMessageMatching("(?s)a (chunk|run).*");
    }
  }

  @Test
  void decode_versionOfANewerProgram_isRefused() {
    assertThatThrownBy(() -> ChunkCodec.decode(0, new byte[] {3}))
        .hasMessage("a chunk of samples began with 3 but it must begin with 1 or 2");
  }

  @Test
  void asKept_roundsOnceToHundredthsAndKnowsWhatCannotBe() {
    assertThat(ChunkCodec.asKept(21_234)).isEqualTo(21_230);
    assertThat(ChunkCodec.asKept(21_235)).isEqualTo(21_240);
    assertThat(ChunkCodec.asKept(-5)).isEqualTo(0);
    assertThat(ChunkCodec.asKept(327_670)).isEqualTo(327_670);
    assertThat(ChunkCodec.asKept(327_680)).isEqualTo(Thousandths.NONE);
    assertThat(ChunkCodec.asKept(-327_680)).isEqualTo(Thousandths.NONE);
    assertThat(ChunkCodec.asKept(Integer.MAX_VALUE)).isEqualTo(Thousandths.NONE);
    assertThat(ChunkCodec.asKept(Thousandths.NONE)).isEqualTo(Thousandths.NONE);
  }

  /** Near each other or far apart, some or all of them not measured, in frames of any length. */
  @Seeded
  void valuesComeBackHoweverFarApartTheyAre(Any any) {
    int count = any.intBetween(1, 100);
    int low = any.intBetween(-32_767, 32_767);
    int high = Math.min(32_767, low + any.intBetween(0, any.yesOrNo() ? 300 : 65_534));
    int[] temperatures = new int[count];
    int[] humidities = new int[count];
    int unmeasured = any.intBetween(0, 10);
    for (int i = 0; i < count; i++) {
      boolean none = any.intBetween(1, 10) <= unmeasured;
      temperatures[i] = none ? Thousandths.NONE : 10 * any.intBetween(low, high);
      humidities[i] = 10 * any.intBetween(low, high);
    }
    List<Run> runs = List.of(new Run(0, 10_000, count, temperatures, humidities));

    assertThat(samplesOf(ChunkCodec.decode(0, ChunkCodec.encode(0, runs))))
        .isEqualTo(samplesOf(runs));
  }

  /** Written by 0.1.0 from the formulas below. */
  @Test
  void decode_chunkOf010_isReadForEver() throws IOException {
    byte[] chunk;
    try (InputStream in = ChunkCodecTest.class.getResourceAsStream("chunk-of-0.1.0.bin")) {
      chunk = in.readAllBytes();
    }
    int[] temperatures = new int[100];
    int[] humidities = new int[100];
    for (int i = 0; i < 100; i++) {
      temperatures[i] = 10 * ((i * i * 37) % 4001 - 2000);
      humidities[i] = i % 9 == 4 ? Thousandths.NONE : 10 * (6000 + (i * 53) % 211);
    }

    assertThat(samplesOf(ChunkCodec.decode(1_790_000_000L, chunk)))
        .isEqualTo(
            samplesOf(
                List.of(
                    new Run(1_790_000_000_000L, 10_000, 100, temperatures, humidities),
                    Run.of(1_790_001_200_000L, Thousandths.NONE, 100_000),
                    new Run(
                        1_790_001_207_000L,
                        60_000,
                        3,
                        new int[] {-327_670, 0, 327_670},
                        new int[] {0, Thousandths.NONE, 50_000}))));
  }

  /** Air in a controlled room: within 0.6 C and 1 % for five minutes. */
  @Test
  void aDayAtTenSeconds_takesLessThanTwoBytesASample() {
    int[] temperatures = new int[8640];
    int[] humidities = new int[8640];
    for (int i = 0; i < 8640; i++) {
      temperatures[i] = 10_300 + 10 * (i * 7 % 61);
      humidities[i] = 66_000 + 10 * (i * 37 % 101);
    }
    byte[] chunk =
        ChunkCodec.encode(0, List.of(new Run(0, 10_000, 8640, temperatures, humidities)));
    assertThat(chunk).hasSizeLessThan(2 * 8640);
  }

  @Test
  void encode_timeWithinASecond_isRefused() {
    assertThatThrownBy(() -> ChunkCodec.encode(0, List.of(Run.of(1500, 0, 0))))
        .hasMessage("a time to keep was 1500 ms but it must be whole seconds");
  }

  private static List<Sample> samplesOf(List<Run> runs) {
    return runs.stream()
        .flatMap(
            run ->
                IntStream.range(0, run.count())
                    .mapToObj(
                        i ->
                            new Sample(
                                Math.floorDiv(
                                    run.startMillis() + (long) i * run.stepMillis(), 1000),
                                run.temperatureMilliC()[i],
                                run.humidityMilliPct()[i])))
        .toList();
  }
}
