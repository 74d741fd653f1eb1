package rindward.controller.settings;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Where something secret is kept: never in the settings file itself, which is read aloud and copied
 * about. Neither is the secret ever part of a sentence.
 *
 * @param key the settings' key, for sentences
 * @param file holds it and nothing else; null where a variable does
 * @param variable name of the environment variable that holds it; null where a file does
 */
public record Secret(String key, @Nullable Path file, @Nullable String variable) {

  /**
   * Reads it.
   *
   * @param environment returns the value of an environment variable, or null
   * @throws IOException in one sentence, when it cannot be read
   */
  public String read(Function<String, @Nullable String> environment) throws IOException {
    if (file != null) {
      try {
        return Files.readString(file).strip();
      } catch (IOException e) {
        throw new IOException(
            key + "_file was '" + file + "' but it must be a file that we may read", e);
      }
    }
    String value = variable == null ? null : environment.apply(variable);
    if (value == null || value.isBlank()) {
      throw new IOException(
          key + "_env was '" + variable + "' but no such environment variable is set");
    }
    return value.strip();
  }

  /**
   * Reads where a secret is kept from {@code <key>_file} or {@code <key>_env}; null without.
   *
   * @param beside the settings file
   */
  static @Nullable Secret find(TableReader table, String key, Path beside) {
    @Nullable Path file =
        table
            .find(key + "_file", Kind.TEXT)
            .map(name -> beside.toAbsolutePath().resolveSibling(name))
            .orElse(null);
    @Nullable String variable = table.find(key + "_env", Kind.TEXT).orElse(null);
    if (file != null && variable != null) {
      table.refuse(key + "_env", "it must not be there beside " + table.path(key + "_file"));
    }
    return file == null && variable == null
        ? null
        : new Secret(table.path(key), file, file == null ? variable : null);
  }
}
