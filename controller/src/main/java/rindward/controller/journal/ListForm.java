package rindward.controller.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Several values of one form; as a text they are separated by blanks. */
final class ListForm<T> extends Form<List<T>> {
  private final Form<T> each;

  ListForm(Form<T> each) {
    super(List.class, each.must());
    this.each = each;
  }

  @Override
  Object plain(List<T> value) {
    return value.stream().map(each::plain).toList();
  }

  @Override
  List<T> fromPlain(Object plain, Understanding seen) {
    if (plain instanceof List<?> list) {
      List<T> all = new ArrayList<>(list.size());
      for (Object one : list) {
        all.add(each.fromPlain(one, seen));
      }
      return List.copyOf(all);
    }
    throw new IllegalArgumentException("'" + plain + "' is no list");
  }

  @Override
  String text(List<T> value) {
    return value.stream().map(each::text).collect(Collectors.joining(" "));
  }

  @Override
  @Nullable List<T> fromText(String text, FieldTexts row) {
    List<T> all = new ArrayList<>();
    for (String one : text.strip().split(" +", -1)) {
      T value = each.fromText(one, row);
      if (value == null) {
        return null;
      }
      all.add(value);
    }
    return List.copyOf(all);
  }
}
