package rindward.controller.journal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Limits;

/**
 * One field of a kind of entry, declared once: how it is written down, in which column of a row,
 * within which limits, and the sentence with which a wrong one is refused.
 *
 * @param <T> its value
 */
public final class Field<T> {
  private final String name;
  private final Form<T> form;
  private final List<Function<T, Optional<String>>> checks = new ArrayList<>();
  private String column;
  private String label;
  private boolean isInRow = true;
  private boolean mayBeUnsaid;
  private @Nullable T otherwise;
  private @Nullable Limits limits;

  private Field(String name, Form<T> form) {
    this.name = name;
    this.form = form;
    this.column = name;
    this.label = name;
  }

  /** The lot that is spoken of. */
  static Field<String> lot() {
    return new Field<>("lot", Forms.LOT).or("");
  }

  /** When it happened. */
  static Field<Instant> at() {
    return time("at");
  }

  static Field<String> crop() {
    return new Field<>("crop", Forms.CROP).or("");
  }

  static Field<String> text(String name) {
    return new Field<>(name, Forms.TEXT).or("");
  }

  static Field<Integer> whole(String name) {
    return new Field<>(name, Forms.WHOLE);
  }

  static Field<Long> number(String name) {
    return new Field<>(name, Forms.LONG);
  }

  static Field<Integer> thousandths(String name) {
    return new Field<>(name, Forms.THOUSANDTHS);
  }

  static Field<Boolean> yes(String name) {
    return new Field<>(name, Forms.YES_NO).or(false);
  }

  static Field<LocalDate> day(String name) {
    return new Field<>(name, Forms.DAY).where(Limit::isWithinReason, Limit.REASON);
  }

  static Field<Instant> time(String name) {
    return new Field<>(name, Forms.TIME)
        .where(
            time -> Limit.isWithinReason(LocalDate.ofInstant(time, ZoneOffset.UTC)), Limit.REASON);
  }

  static <E extends Enum<E>> Field<E> word(String name, Class<E> words) {
    return new Field<>(name, new WordForm<>(words));
  }

  static <E extends Enum<E>> Field<List<E>> words(String name, Class<E> words) {
    return list(name, new WordForm<>(words)).or(List.of());
  }

  static <P> Field<List<P>> list(String name, Form<P> each) {
    return new Field<>(name, new ListForm<>(each));
  }

  /** Fields of their own; in a row each has its column. */
  static <P> Field<P> of(String name, Form<P> form) {
    return new Field<>(name, form);
  }

  /** Its column in a row has another name. */
  Field<T> column(String other) {
    column = other;
    return this;
  }

  /** It has no place in a row, and so its kind has none. */
  Field<T> notInRow() {
    isInRow = false;
    return this;
  }

  /** What people call it when it is refused. */
  Field<T> called(String words) {
    label = words;
    return this;
  }

  /** It may be left unsaid, and is null then. */
  Field<T> orNothing() {
    otherwise = null;
    mayBeUnsaid = true;
    return this;
  }

  /** What a row means that does not say it. */
  Field<T> or(T unsaid) {
    otherwise = unsaid;
    return this;
  }

  /** Refuses what is false of it; the sentence ends "but" with {@code must}. */
  Field<T> where(Predicate<T> right, String must) {
    checks.add(
        value ->
            right.test(value)
                ? Optional.empty()
                : FieldErrors.wrong(label, form.shown(value), must));
    return this;
  }

  /** Refuses with a sentence of somebody else. */
  Field<T> checked(Function<T, Optional<String>> refusal) {
    checks.add(refusal);
    return this;
  }

  /** Refuses an empty text. */
  Field<T> notBlank(String must) {
    checks.add(value -> FieldErrors.text(label, String.valueOf(value), must));
    return this;
  }

  /** Refuses an empty text. */
  Field<T> notBlank() {
    return notBlank("it must not be");
  }

  /** Refuses a whole number below {@code low} or above {@code high}. */
  Field<T> within(int low, int high) {
    limits = new Limits(low, high);
    checks.add(value -> FieldErrors.whole(label, ((Number) value).intValue(), low, high));
    return this;
  }

  /** Refuses a value below {@code low} or above {@code high}, in a sentence of its own. */
  Field<T> within(int low, int high, String must) {
    limits = new Limits(low, high);
    Limits both = limits;
    return where(value -> both.contains(((Number) value).intValue()), must);
  }

  /** Returns its name in the journal, which is that of the record's component. */
  String name() {
    return name;
  }

  /** Returns how it is written down. */
  Form<T> form() {
    return form;
  }

  /** Returns its column in a row. */
  String column() {
    return column;
  }

  /** Returns what a row must say; false if it may be left unsaid. */
  boolean mustBeSaid() {
    return otherwise == null && !mayBeUnsaid;
  }

  /** Returns what it must be, for whoever writes to the API. */
  String words() {
    return form.must().replaceFirst("it must be ", "")
        + limits().map(l -> ", " + text(l.low()) + " to " + text(l.high())).orElse("")
        + (mustBeSaid() ? "; must be said" : "");
  }

  private String text(int limit) {
    return form == Forms.THOUSANDTHS ? Forms.THOUSANDTHS.text(limit) : Integer.toString(limit);
  }

  boolean mayBeNull() {
    return mayBeUnsaid;
  }

  boolean isInRow() {
    return isInRow;
  }

  Optional<Limits> limits() {
    return Optional.ofNullable(limits);
  }

  /** Returns why the value cannot be; nothing if it can. */
  Optional<String> refusal(T value) {
    for (Function<T, Optional<String>> check : checks) {
      Optional<String> refusal = check.apply(value);
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    return form instanceof Parts<T> parts ? parts.refusal(value) : Optional.empty();
  }

  void toRow(T value, Map<String, String> row) {
    if (form instanceof Parts<T> parts) {
      parts.toRow(value, row);
    } else {
      row.put(column, form.text(value));
    }
  }

  @Nullable T fromRow(FieldTexts row) throws Misstated {
    if (form instanceof Parts<T> parts) {
      return parts.fromRow(row);
    }
    String text = row.text(column);
    if (!form.isSaid(text)) {
      if (mustBeSaid()) {
        throw Misstated.of(column, text, form.must());
      }
      return otherwise;
    }
    T value = form.fromText(text, row);
    if (value == null) {
      throw Misstated.of(column, text, form.must());
    }
    return value;
  }
}
