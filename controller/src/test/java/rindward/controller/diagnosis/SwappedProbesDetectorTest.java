package rindward.controller.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Which probe answers which heater. */
class SwappedProbesDetectorTest {
  private final SwappedProbesDetector pair = new SwappedProbesDetector();
  private long now;
  private double curingC = 27;
  private double storageC = 12;

  private void pass(int minutes, boolean heatsCuring, boolean heatsStorage) {
    for (int i = 0; i < minutes * 6; i++) {
      now += 10;
      pair.tick(now, curingC, heatsCuring, storageC, heatsStorage);
    }
  }

  @Test
  void oneHeaterThatMovesTheOtherProbe_upAndDown_isFound() {
    pass(10, false, false);
    pass(1, true, false);
    storageC += 4;
    pass(19, true, false);
    assertThat(pair.isSuspected()).isTrue();
    assertThat(pair.isFound()).isFalse();

    pass(1, false, false);
    storageC -= 4;
    pass(9, false, false);
    assertThat(pair.isFound()).isTrue();
  }

  @Test
  void heatersThatMoveTheirOwnProbes_raiseNoSuspicion() {
    for (int i = 0; i < 4; i++) {
      pass(1, true, false);
      curingC += 3;
      pass(19, true, false);
      pass(1, false, true);
      curingC -= 3;
      storageC += 2;
      pass(9, false, true);
      storageC -= 2;
      assertThat(pair.isSuspected()).isFalse();
    }
  }

  @Test
  void deadHeaterBesideARoomThatHeatsItself_isNoSwap() {
    for (int i = 0; i < 3; i++) {
      pass(1, true, true);
      storageC += 2;
      pass(19, true, true);
      pass(1, false, false);
      storageC -= 2;
      pass(9, false, false);
    }

    assertThat(pair.isSuspected()).isFalse();
  }

  @Test
  void oneCoincidence_isForgottenWithinTheHour() {
    pass(10, false, false);
    pass(1, true, false);
    storageC += 2;
    pass(19, true, false);
    assertThat(pair.isSuspected()).isTrue();

    pass(61, true, false);
    assertThat(pair.isSuspected()).isFalse();
  }

  @Test
  void probesHungRight_endIt() {
    oneHeaterThatMovesTheOtherProbe_upAndDown_isFound();

    pass(1, true, false);
    curingC += 3;
    pass(5, true, false);
    assertThat(pair.isFound()).isFalse();
  }
}
