package rindward.hardware.sensor;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * An SHT3x or SHT4x as its data sheet describes it: it refuses a command that it does not know, and
 * does not answer before its conversion is done.
 */
final class FakeSht extends FakeDevice {
  private static final String STATUS_HEATER_OFF = "8010 E1";
  private static final String STATUS_HEATER_ON = "A010 3D";

  private final ShtFamily family;
  private final FakeTime time;
  final List<String> commands = new ArrayList<>();
  String frame = "6666 93 8000 A2";
  boolean hasHeaterOn;
  boolean isHeaterStuck;
  private long readyMillis = Long.MAX_VALUE;
  private long nextCommandMillis;
  private byte[] answer = {};

  FakeSht(ShtFamily family, FakeTime time) {
    this.family = family;
    this.time = time;
  }

  @Override
  void take(byte[] bytes) throws IOException {
    String command = HexFormat.of().withUpperCase().formatHex(bytes);
    commands.add(command);
    if (time.passedMillis() < readyMillis && answer.length > 0) {
      throw new IOException("it is busy");
    }
    answer = new byte[0];
    if (family == ShtFamily.SHT3X && time.passedMillis() < nextCommandMillis) {
      throw new IOException("it wants 1 ms between two commands");
    }
    nextCommandMillis = time.passedMillis() + 1;
    if (family == ShtFamily.SHT3X) {
      takeSht3x(command);
    } else {
      takeSht4x(command);
    }
  }

  // Command words and times: data sheet SHT3x-DIS v5, sections 2.2 and 4.
  private void takeSht3x(String command) throws IOException {
    switch (command) {
      case "30A2", "3066" -> hasHeaterOn = isHeaterStuck;
      case "F32D" -> answerAfter(0, hasHeaterOn ? STATUS_HEATER_ON : STATUS_HEATER_OFF);
      case "2400" -> answerAfter(15, frame);
      default -> throw new IOException("it does not know " + command);
    }
  }

  // Command bytes and times: data sheet SHT4x v6, sections 3.1 and 4.5.
  private void takeSht4x(String command) throws IOException {
    switch (command) {
      case "94" -> hasHeaterOn = false;
      case "FD" -> answerAfter(9, frame);
      default -> throw new IOException("it does not know " + command);
    }
  }

  private void answerAfter(int millis, String bytes) {
    readyMillis = time.passedMillis() + millis;
    answer = Hex.bytes(bytes);
  }

  @Override
  byte[] give(int count) throws IOException {
    if (answer.length == 0 || time.passedMillis() < readyMillis) {
      throw new IOException("it does not answer");
    }
    byte[] given = answer;
    answer = new byte[0];
    return given;
  }
}
