package rindward.controller.journal;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A record by its fields. The fields are those of the record, in its order and of its types; a
 * declaration that says otherwise is noticed as soon as it is loaded.
 *
 * @param <R> the record
 */
final class Parts<R> extends Form<R> {
  private final List<Field<?>> fields;
  private final RecordComponent[] components;
  private final Constructor<R> constructor;
  private Set<String> dropped = Set.of();

  private Parts(Class<R> type, List<Field<?>> fields) {
    super(type, "it must be " + type.getSimpleName());
    this.fields = fields;
    this.components = type.getRecordComponents();
    List<String> declared = fields.stream().map(f -> f.name() + " " + f.form().type()).toList();
    List<String> real =
        Arrays.stream(components).map(c -> c.getName() + " " + boxed(c.getType())).toList();
    if (!declared.equals(real)) {
      throw new IllegalStateException(
          "fields of " + type + " were declared as " + declared + " but they are " + real);
    }
    try {
      this.constructor =
          type.getDeclaredConstructor(
              Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(e);
    }
  }

  static <R> Parts<R> of(Class<R> type, Field<?>... fields) {
    return new Parts<>(type, List.of(fields));
  }

  /** Names that were written once and say nothing. */
  Parts<R> dropping(String... names) {
    dropped = Set.of(names);
    return this;
  }

  List<Field<?>> fields() {
    return fields;
  }

  @Override
  Map<String, Object> plain(R value) {
    Map<String, Object> plain = new LinkedHashMap<>();
    for (int i = 0; i < components.length; i++) {
      Object part = part(value, i);
      if (part != null) {
        plain.put(fields.get(i).name(), field(i).form().plain(part));
      }
    }
    return plain;
  }

  @Override
  R fromPlain(Object plain, Understanding seen) {
    if (!(plain instanceof Map<?, ?> map)) {
      throw new IllegalArgumentException("'" + plain + "' has no fields");
    }
    @Nullable Object[] values = new @Nullable Object[components.length];
    int understood = 0;
    for (int i = 0; i < values.length; i++) {
      Field<Object> field = field(i);
      Object part = map.get(field.name());
      if (part != null) {
        values[i] = field.form().fromPlain(part, seen);
      } else if (!field.mayBeNull()) {
        throw new IllegalArgumentException("there is no " + field.name());
      }
      understood += map.containsKey(field.name()) ? 1 : 0;
    }
    if (map.size() > understood && hasMore(map)) {
      seen.leftSomething();
    }
    return make(values);
  }

  private boolean hasMore(Map<?, ?> map) {
    return map.keySet().stream()
        .anyMatch(
            key ->
                fields.stream().noneMatch(f -> f.name().equals(key))
                    && !dropped.contains(key)
                    && !EntryKind.MARKS.contains(key));
  }

  @Override
  @Nullable R fromText(String text, FieldTexts row) {
    return null;
  }

  void toRow(R value, Map<String, String> row) {
    for (int i = 0; i < components.length; i++) {
      Object part = part(value, i);
      if (part != null) {
        field(i).toRow(part, row);
      }
    }
  }

  R fromRow(FieldTexts row) throws Misstated {
    @Nullable Object[] values = new @Nullable Object[components.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = fields.get(i).fromRow(row);
    }
    return make(values);
  }

  /** Returns why one of its fields cannot be; nothing if all can. */
  Optional<String> refusal(R value) {
    for (int i = 0; i < components.length; i++) {
      Object part = part(value, i);
      Optional<String> refusal = part == null ? Optional.empty() : field(i).refusal(part);
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    return Optional.empty();
  }

  /** The types of fields and components were compared when the declaration was loaded. */
  @SuppressWarnings("unchecked")
  private Field<Object> field(int i) {
    return (Field<Object>) fields.get(i);
  }

  private @Nullable Object part(R value, int i) {
    try {
      return components[i].getAccessor().invoke(value);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException(e);
    }
  }

  private R make(@Nullable Object[] values) {
    try {
      return constructor.newInstance(values);
    } catch (InvocationTargetException e) {
      throw new IllegalArgumentException(e.getCause());
    } catch (InstantiationException | IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Class<?> boxed(Class<?> type) {
    if (type == int.class) {
      return Integer.class;
    }
    if (type == long.class) {
      return Long.class;
    }
    return type == boolean.class ? Boolean.class : type;
  }
}
