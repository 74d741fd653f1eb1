package rindward.controller.link;

/**
 * How a way is doing by which the shed reaches somebody.
 *
 * @param name of the channel or connection
 * @param trouble what is wrong with it, in one sentence; empty when all is well
 * @param waiting how much waits to go out
 */
public record ChannelState(String name, String trouble, int waiting) {}
