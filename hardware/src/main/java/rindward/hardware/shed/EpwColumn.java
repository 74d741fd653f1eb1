package rindward.hardware.shed;

/** A column of the EPW format, with the code from which on its values mean "missing". */
enum EpwColumn {
  TEMPERATURE("dry bulb temperature", 6, 99.9, -90, 70),
  DEW_POINT("dew point", 7, 99.9, -90, 70),
  HUMIDITY("relative humidity", 8, 999, 0, 110),
  PRESSURE("pressure", 9, 999999, 31000, 120000),
  SUN("global horizontal radiation", 13, 9999, 0, 2000),
  WIND("wind speed", 21, 999, 0, 60);

  final String title;
  final int index;
  private final double missingFrom;
  private final double lowest;
  private final double highest;

  EpwColumn(String title, int index, double missingFrom, double lowest, double highest) {
    this.title = title;
    this.index = index;
    this.missingFrom = missingFrom;
    this.lowest = lowest;
    this.highest = highest;
  }

  boolean isMissing(double value) {
    return value >= missingFrom;
  }

  boolean holds(double value) {
    return value >= lowest && value <= highest;
  }

  String range() {
    return lowest + ".." + highest;
  }
}
