package rindward.controller.notice;

/**
 * What one person reads.
 *
 * @param person name
 * @param subject one line: where and what
 * @param text since when, how bad, what to do, and a link
 */
public record Notice(String person, String subject, String text) {}
