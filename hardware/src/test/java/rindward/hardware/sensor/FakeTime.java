package rindward.hardware.sensor;

/** Time that passes only while somebody waits. */
final class FakeTime implements Pause {
  private long passedMillis;

  @Override
  public void millis(int millis) {
    passedMillis += millis;
  }

  long passedMillis() {
    return passedMillis;
  }
}
