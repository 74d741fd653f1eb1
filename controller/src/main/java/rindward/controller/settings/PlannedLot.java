package rindward.controller.settings;

import java.time.MonthDay;
import org.jspecify.annotations.Nullable;

/**
 * A lot as a season that is only simulated plans it: {@code [season.<code>]} in the settings.
 *
 * @param code its code
 * @param crop key of its type in the crop guide
 * @param massGrams what it weighs when it comes in
 * @param arrives the day it comes in
 * @param room where it goes first
 * @param then where it goes when it has cured; null if it stays
 */
public record PlannedLot(
    String code,
    String crop,
    int massGrams,
    MonthDay arrives,
    String room,
    @Nullable String then) {}
