package rindward.controller.diagnosis;

import rindward.controller.alarm.RoomFacts;
import rindward.hardware.Thousandths;

/**
 * Watches one room tick by tick for what its temperature gives away: a fall that will end in the
 * cold, a heater that heats nothing, an open door. Bounded memory; confined to the control loop
 * thread.
 */
public final class RoomDetectors {
  private final DeadHeaterDetector heater = new DeadHeaterDetector();
  private final FastFallDetector fall = new FastFallDetector();
  private final OpenDoorDetector inrush = new OpenDoorDetector();
  private final ColdForecaster cold = new ColdForecaster();
  private long beganSeconds = Long.MIN_VALUE;
  private double slowC = Double.NaN;
  private int ticks;
  private int heated;
  private boolean isVented;
  private double roomSum;
  private double outdoorSum;

  /**
   * Takes in one tick.
   *
   * @param nowSeconds monotonic
   * @param room the room's air
   * @param outdoor the air outside
   * @param isHeating whether the heater is commanded on
   * @param canHeat whether there is a heater that control is free to switch on
   * @param isVenting whether anything is commanded that lets outdoor air in
   * @param isWatered whether anything is commanded that gives water to the air or takes it
   * @param thresholdMilliC what the room must not fall below, or {@link Thousandths#NONE}
   */
  public void tick(
      long nowSeconds,
      WatchedAir room,
      WatchedAir outdoor,
      boolean isHeating,
      boolean canHeat,
      boolean isVenting,
      boolean isWatered,
      int thresholdMilliC) {
    double roomC = room.temperatureC();
    inrush.tick(
        nowSeconds,
        roomC,
        room.vapourPa(),
        room.saturationPa(),
        outdoor.vapourPa(),
        isHeating,
        isVenting,
        isWatered);
    // Against an open door no heater can be judged, nor against water that evaporates.
    heater.tick(nowSeconds, roomC, isHeating, isVenting || isWatered || inrush.isSeen());
    boolean knowsVapour = !Double.isNaN(room.vapourPa()) && !Double.isNaN(outdoor.vapourPa());
    fall.tick(nowSeconds, roomC, knowsVapour, isHeating, isVenting, heater.usualLiftK());
    beganSeconds = beganSeconds == Long.MIN_VALUE ? nowSeconds : beganSeconds;
    ticks++;
    heated += isHeating ? 1 : 0;
    isVented |= isVenting;
    roomSum += roomC;
    outdoorSum += outdoor.temperatureC();
    if (nowSeconds - beganSeconds >= RoomSample.SECONDS) {
      cold.add(minute(), canHeat, Thousandths.toDouble(thresholdMilliC));
      beganSeconds = nowSeconds;
      ticks = 0;
      heated = 0;
      isVented = false;
      roomSum = 0;
      outdoorSum = 0;
    }
  }

  /**
   * Returns in how many minutes the room will be below its threshold to stay; {@link
   * RoomFacts#NOT_FORECAST} unless that is less than three hours away and has held for five
   * minutes.
   */
  public int minutesToCold() {
    return cold.minutes();
  }

  /** Tells whether the heater is commanded on and nothing warms. */
  public boolean isHeaterDead() {
    return heater.isDead();
  }

  /** Returns how far the heater usually lifts the air, K; NaN until it has been seen. */
  public double usualLiftK() {
    return heater.usualLiftK();
  }

  /** Tells whether the air falls faster than anything that is switched can explain. */
  public boolean isFallingFast() {
    return fall.isFast() || inrush.isSeen();
  }

  private RoomSample minute() {
    double meanC = roomSum / ticks;
    if (Double.isNaN(slowC)) {
      slowC = meanC;
    } else if (!Double.isNaN(meanC)) {
      slowC = RoomSample.slower(slowC, meanC);
    }
    return new RoomSample(meanC, slowC, outdoorSum / ticks, (double) heated / ticks, isVented);
  }
}
