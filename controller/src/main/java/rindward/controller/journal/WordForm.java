package rindward.controller.journal;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One of a few words. The journal holds the constant's name, which must never change; people read
 * and write what it calls itself.
 */
final class WordForm<E extends Enum<E>> extends Form<E> {
  private final Class<E> words;

  WordForm(Class<E> words) {
    super(
        words,
        "it must be one of "
            + Arrays.stream(words.getEnumConstants())
                .map(Enum::toString)
                .collect(Collectors.joining(", ")));
    this.words = words;
  }

  @Override
  Object plain(E value) {
    return value.name();
  }

  @Override
  E fromPlain(Object plain, Understanding seen) {
    if (plain instanceof String name) {
      return Enum.valueOf(words, name);
    }
    throw new IllegalArgumentException("'" + plain + "' is no word of this version");
  }

  @Override
  @Nullable E fromText(String text, FieldTexts row) {
    return Arrays.stream(words.getEnumConstants())
        .filter(word -> word.toString().equalsIgnoreCase(text.strip()))
        .findFirst()
        .orElse(null);
  }
}
