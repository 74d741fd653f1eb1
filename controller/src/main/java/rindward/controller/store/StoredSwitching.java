package rindward.controller.store;

/**
 * An output that was switched, and why.
 *
 * @param atMillis when, epoch milliseconds UTC
 * @param room where
 * @param output which, by its name in the settings
 * @param isOn whether it was switched on
 * @param reason why, in plain words
 */
public record StoredSwitching(
    long atMillis, String room, String output, boolean isOn, String reason) {}
