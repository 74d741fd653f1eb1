package rindward.controller.command.shed;

import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.function.Function;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Settings;
import rindward.hardware.pi4j.ConversionPause;
import rindward.hardware.sensor.Pause;

/**
 * What a command needs that works with a person beside it: the parts of this machine, time to wait
 * for them, and what the person types.
 *
 * @param boards the parts that settings name
 * @param in what the person types, line by line
 */
public record Attendance(
    Function<Settings, RealBoard> boards, Pause pause, Time time, InputStream in) {

  /** Returns this machine and whoever sits at it. */
  static Attendance here() {
    Time time = Time.system();
    return new Attendance(
        settings -> RealBoard.of(settings, time), new ConversionPause(), time, System.in);
  }

  /** Returns who puts questions to the person. To be asked for once: it reads ahead. */
  Questions questions(PrintWriter out) {
    return new Questions(
        out, new BufferedReader(new InputStreamReader(in, Charset.defaultCharset())));
  }
}
