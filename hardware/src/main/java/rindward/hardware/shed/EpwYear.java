package rindward.hardware.shed;

/**
 * The hourly columns of one weather year, index 0 for the hour that ends at 01:00 on 1 January.
 *
 * @param utcOffsetSeconds local standard time less UTC
 * @param globalHorizontalWPerM2 mean of the hour
 * @param monthlyGroundC ground at the greatest stated depth up to 2 m, by month; the mean air
 *     temperature where the file states none
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, and kept inside this package
record EpwYear(
    String place,
    int utcOffsetSeconds,
    double[] temperatureC,
    double[] vapourPa,
    double[] pressurePa,
    double[] windMPerS,
    double[] globalHorizontalWPerM2,
    double[] monthlyGroundC) {}
