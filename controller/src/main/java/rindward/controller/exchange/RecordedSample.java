package rindward.controller.exchange;

/** One row as read: instant, and both values in thousandths as in {@code Run}. */
record RecordedSample(long atMillis, int temperatureMilliC, int humidityMilliPct) {}
