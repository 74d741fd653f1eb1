package rindward.controller.fault;

/**
 * One line of the fault table, as a scenario found it.
 *
 * @param fault what is broken
 * @param does what the shed does about it
 * @param soon how soon, as measured, and within what bound where there is one
 * @param reports what a person is told, and by what
 * @param after what happens when it is mended
 */
record FaultRow(String fault, String does, String soon, String reports, String after) {
  String markdown() {
    return "| " + String.join(" | ", fault, does, soon, reports, after) + " |";
  }
}
