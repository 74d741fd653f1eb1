package rindward.controller.metrics;

import java.util.function.Supplier;

/**
 * A way by which the shed reaches somebody, as far as it is counted.
 *
 * @param trouble what is wrong with it, in one sentence; empty when all is well
 * @param waiting how much waits to go out
 */
public record DeliveryChannel(String name, Supplier<String> trouble, Supplier<Integer> waiting) {}
