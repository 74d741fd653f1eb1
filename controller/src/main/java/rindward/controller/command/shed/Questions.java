package rindward.controller.command.shed;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.Predicate;
import rindward.hardware.Thousandths;

/** What is asked of whoever stands beside the parts, and what they answer, line by line. */
public final class Questions implements Predicate<String> {
  private final PrintWriter out;
  private final BufferedReader answers;

  Questions(PrintWriter out, BufferedReader answers) {
    this.out = out;
    this.answers = answers;
  }

  /** Tells whether the answer is a plain yes; anything else, and an end of all answers, is no. */
  @Override
  public boolean test(String question) {
    return "yes".equals(line(question + " Type yes to agree: "));
  }

  /** Returns what was answered in own words; empty for nothing, and at an end of all answers. */
  String words(String question) {
    return line(question + " ").strip();
  }

  /** Returns a temperature, thousandths of a degree C; empty where none was read. */
  OptionalInt temperature(String question) {
    String said = words(question + " (C; leave it empty if none was read)");
    if (!said.matches("-?[0-9]{1,2}([.,][0-9])?")) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(
        Thousandths.of(Double.parseDouble(said.replace(',', '.').toLowerCase(Locale.ROOT))));
  }

  private String line(String prompt) {
    out.print(prompt);
    out.flush();
    try {
      String line = answers.readLine();
      return line == null ? "" : line;
    } catch (IOException e) {
      throw new UncheckedIOException("no answer could be read", e);
    }
  }
}
