package rindward.controller.room;

import java.time.Duration;
import rindward.hardware.OutputKind;

/**
 * One switched output of a room.
 *
 * @param name its name, also the relay's
 * @param kind what it does to the air
 * @param minimumOn how long it stays on once it is on; protects contacts and compressors
 * @param minimumOff how long it stays off once it is off
 */
public record Output(String name, OutputKind kind, Duration minimumOn, Duration minimumOff) {}
