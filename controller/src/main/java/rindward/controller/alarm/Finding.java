package rindward.controller.alarm;

/**
 * Something that is simply so or not: a silent probe, an output without effect, a lot past its
 * time. It holds in every tick that finds it, and is gone in the first that does not.
 *
 * @param kind any kind that {@link Conditions} does not judge from a room's numbers
 * @param thing name of the probe, output, lot or channel; empty where the room or shed is meant
 */
public record Finding(AlarmKind kind, String thing) {}
