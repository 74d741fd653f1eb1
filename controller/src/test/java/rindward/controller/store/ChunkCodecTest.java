package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import rindward.controller.ledger.Run;
import rindward.hardware.Thousandths;

/** What goes to disk comes back, and costs what was promised. */
class ChunkCodecTest {

  record Sample(long second, int temperature, int humidity) {}

  @Provide
  Arbitrary<Sample> anySample() {
    Arbitrary<Integer> value =
        Arbitraries.oneOf(
            Arbitraries.integers().between(-32767, 32767).map(hundredths -> hundredths * 10),
            Arbitraries.just(Thousandths.NONE));
    Arbitrary<Long> second =
        Arbitraries.oneOf(
            Arbitraries.longs().between(0, 300).map(n -> 1_700_000_000 + 10 * n),
            Arbitraries.longs().between(-200_000, 4_000_000_000L));
    return Combinators.combine(second, value, value).as(Sample::new);
  }

  @Property
  void anySamplesInAnyOrderComeBackSortedAndTheLaterOfASecondCounts(
      @ForAll List<@From("anySample") Sample> samples) {
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

  @Property
  void theRunsOfADayShareOneChunk(
      @ForAll @Size(min = 1, max = 200) List<@IntRange(max = 86_399) Integer> secondsOfDay) {
    long midnight = 20_000L * Samples.DAY_SECONDS;
    Samples day = new Samples();
    secondsOfDay.forEach(s -> day.add(midnight + s, 10 * (s % 1000), 50_000));
    List<Run> runs = day.runs();
    long first = runs.get(0).startMillis() / 1000;

    List<Run> back = ChunkCodec.decode(first, ChunkCodec.encode(first, runs));

    assertThat(samplesOf(back)).isEqualTo(samplesOf(runs));
    assertThat(back).hasSameSizeAs(runs);
  }

  @Property
  void damagedBytesAreRefusedOrReadButNeverEndless(@ForAll byte[] bytes) {
    try {
      assertThat(ChunkCodec.decode(0, bytes)).allMatch(run -> run.count() > 0);
    } catch (IllegalArgumentException refused) {
      assertThat(refused).hasMessageMatching("(?s)a (chunk|run).*");
    }
  }

  @Example
  void decode_versionOfANewerProgram_isRefused() {
    assertThatThrownBy(() -> ChunkCodec.decode(0, new byte[] {2}))
        .hasMessage("a chunk of samples began with 2 but it must begin with 1");
  }

  @Example
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

  @Example
  void aDayAtTenSeconds_takesFourBytesASample() {
    int[] values = new int[8640];
    Arrays.fill(values, 12_340);
    byte[] chunk = ChunkCodec.encode(0, List.of(new Run(0, 10_000, 8640, values, values)));
    assertThat(chunk).hasSize(4 * 8640 + 13);
  }

  @Example
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
