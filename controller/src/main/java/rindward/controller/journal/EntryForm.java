package rindward.controller.journal;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** An entry inside another one; a row has no place for it. */
final class EntryForm extends Form<Entry> {
  EntryForm() {
    super(Entry.class, "it must be an entry");
  }

  @Override
  Object plain(Entry value) {
    return EntryKinds.plain(value);
  }

  @Override
  Entry fromPlain(Object plain, Understanding seen) {
    if (plain instanceof Map<?, ?> fields) {
      return EntryKinds.read(fields, seen);
    }
    throw new IllegalArgumentException("'" + plain + "' is no entry");
  }

  @Override
  @Nullable Entry fromText(String text, FieldTexts row) {
    return null;
  }
}
