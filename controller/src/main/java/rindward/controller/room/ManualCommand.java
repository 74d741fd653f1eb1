package rindward.controller.room;

import java.time.Instant;
import rindward.hardware.OutputKind;

/**
 * What a person has switched by hand. It always ends; on does not survive a restart, off does.
 *
 * @param kind which output of the room
 * @param on what it should do
 * @param until when the program takes over again
 * @param by who said so
 */
public record ManualCommand(OutputKind kind, boolean on, Instant until, String by) {}
