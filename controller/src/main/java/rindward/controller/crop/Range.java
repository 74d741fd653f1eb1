package rindward.controller.crop;

/**
 * The air a lot or a room wants.
 *
 * @param temperature limits in thousandths of a degree C
 * @param humidity limits in thousandths of a percent relative humidity
 */
public record Range(Limits temperature, Limits humidity) {}
