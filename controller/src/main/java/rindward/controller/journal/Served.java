package rindward.controller.journal;

import java.util.List;

/**
 * One sample of a session.
 *
 * @param name what the cook calls it
 * @param lot code of the lot it comes from
 * @param fruits the one to three fruits that are cut for it
 */
public record Served(String name, String lot, List<String> fruits) {
  /** Its fields. */
  static final Parts<Served> PARTS =
      Parts.of(
          Served.class, Field.text("name"), Field.text("lot"), Field.list("fruits", Forms.TEXT));

  public Served {
    fruits = List.copyOf(fruits);
  }
}
