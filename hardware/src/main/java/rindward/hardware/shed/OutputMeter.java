package rindward.hardware.shed;

/**
 * What one relay's contact has done since the shed was opened.
 *
 * @param switchings closings and openings of the contact
 * @param hoursOn time closed
 * @param kWh electricity of its room's outputs of that kind
 */
public record OutputMeter(int switchings, double hoursOn, double kWh) {}
