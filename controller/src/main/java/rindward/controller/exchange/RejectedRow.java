package rindward.controller.exchange;

/**
 * A row that was left out.
 *
 * @param line line of the file, from 1
 * @param sentence what was wrong with it
 */
public record RejectedRow(long line, String sentence) {}
