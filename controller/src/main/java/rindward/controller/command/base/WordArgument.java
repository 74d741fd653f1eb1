package rindward.controller.command.base;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads one of a few words, such as {@code grow-again}. */
public final class WordArgument<W> implements ITypeConverter<W> {
  private final List<W> words;

  /**
   * @param words an enum; the {@code toString} of each is how it is written
   */
  public WordArgument(Class<W> words) {
    this.words = List.of(words.getEnumConstants());
  }

  @Override
  public W convert(String text) {
    return words.stream()
        .filter(word -> written(word).equals(text.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new TypeConversionException(
                    words.stream()
                        .map(WordArgument::written)
                        .collect(
                            Collectors.joining(
                                ", ", "it must be one of ", ", but it was '" + text + "'"))));
  }

  private static String written(Object word) {
    return word.toString().toLowerCase(Locale.ROOT);
  }
}
