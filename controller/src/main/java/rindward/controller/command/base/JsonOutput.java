package rindward.controller.command.base;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * How every command answers {@code --json}: one object, keys in the order of the record, instants
 * as ISO text in UTC, null for what is not known.
 */
public final class JsonOutput {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .build();
  private static final ObjectWriter WRITER = MAPPER.writerWithDefaultPrettyPrinter();

  private JsonOutput() {}

  public static void print(PrintWriter out, Object answer) {
    try {
      out.println(WRITER.writeValueAsString(answer));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("an answer has no JSON form: " + answer, e);
    }
    out.flush();
  }

  /**
   * Reads back what {@link #print} once put into a file.
   *
   * @throws IOException in one sentence
   */
  public static <T> T read(Path file, Class<T> type) throws IOException {
    try {
      return MAPPER.readValue(file.toFile(), type);
    } catch (IOException e) {
      throw new IOException(file + " is not what this command prints with --json", e);
    }
  }

  /** Returns null for a NaN, which JSON cannot say. */
  public static @Nullable Double known(double value) {
    return Double.isNaN(value) ? null : value;
  }
}
