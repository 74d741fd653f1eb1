package rindward.controller.broadcast;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Takes what is said over the broker: answers to alarms and commands by hand. Only when it is
 * signed by somebody who may do that on the page, only when it was said just now and for the first
 * time, and never when the broker had kept it: nobody knows how old such a word is. For one thread.
 */
public final class Intake {
  private static final Duration FRESH = Duration.ofMinutes(2);
  private static final Pattern REQUEST = Pattern.compile("[A-Za-z0-9_-]{8,80}");
  private static final JsonMapper JSON =
      JsonMapper.builder().addModule(new JavaTimeModule()).build();

  /** Longer than a message is fresh, before and after its time. */
  private static final Duration MEMORY = FRESH.multipliedBy(3);

  /** More than this many at once are no person's; forgetting one could let it work twice. */
  private static final int MOST_SAID = 1_000;

  private static final int MOST_LETTERS = 4_000;

  private final Function<String, Optional<Signer>> signerOf;
  private final Hand hand;
  private final Instant since;
  private final Map<String, Said> said = new HashMap<>();

  /** What somebody has said, and what they were told; said again, it is told again and not done. */
  private record Said(Instant at, Reply reply) {}

  /**
   * Somebody who may do a helper's work.
   *
   * @param secret with which their words are signed
   */
  public record Signer(String name, byte[] secret) {}

  /** Does what was said; each method returns why it cannot be, or nothing when it was done. */
  public interface Hand {
    Optional<String> answer(
        String alarm, String answer, @Nullable Instant until, String by, String request);

    Optional<String> command(
        String room, String kind, boolean on, Instant until, String by, String request);

    Optional<String> release(String room, String kind, String by);
  }

  /** A word, read leniently: what it lacks is null. */
  private record Word(
      @Nullable String request,
      @Nullable Instant at,
      @Nullable String say,
      @Nullable String alarm,
      @Nullable String answer,
      @Nullable String room,
      @Nullable String kind,
      @Nullable Boolean on,
      @Nullable Instant until) {}

  /**
   * What became of it.
   *
   * @param request the sender's own name for it; empty where it had none
   * @param text JSON for the sender
   */
  public record Reply(String request, String text) {}

  /**
   * @param signerOf returns who signs with the API token of this public name, if they may do a
   *     helper's work
   * @param since when the shed began to listen: what was said before, it may have heard already
   */
  public Intake(Function<String, Optional<Signer>> signerOf, Hand hand, Instant since) {
    this.signerOf = signerOf;
    this.hand = hand;
    this.since = since;
  }

  /** Takes one message and returns what to tell its sender. */
  public Reply take(String text, boolean isRetained, Instant now) {
    if (isRetained) {
      return reply("", Optional.of(KEPT));
    }
    Optional<SignedWord> signed =
        text.length() > MOST_LETTERS ? Optional.empty() : SignedWord.read(text);
    if (signed.isEmpty()) {
      return reply("", Optional.of(SignedWord.isBareToken(text) ? BARE_TOKEN : NO_WORD));
    }
    Optional<Signer> by =
        signerOf
            .apply(String.valueOf(signed.get().key()))
            .filter(signer -> signed.get().isBy(signer.secret()));
    if (by.isEmpty()) {
      return reply("", Optional.of(NOT_SIGNED));
    }
    Word word;
    try {
      word = JSON.readValue(signed.get().word(), Word.class);
    } catch (JsonProcessingException e) {
      return reply("", Optional.of("The word must be JSON as described in MQTT.md."));
    }
    String request = word == null || word.request == null ? "" : word.request;
    if (word == null || !REQUEST.matcher(request).matches()) {
      return reply("", Optional.of("request must be 8 to 80 letters, figures, - or _."));
    }
    return once(word, by.get().name(), request, now);
  }

  private static final String KEPT =
      "A kept message is never carried out; send it without the retain flag.";
  private static final String NO_WORD =
      "The message must be JSON with key, word and proof as described in MQTT.md.";
  private static final String NOT_SIGNED =
      "The proof does not fit the word, or the key is unknown, has ended, or may not do this.";
  private static final String BARE_TOKEN =
      "A word carries no token any more: it is signed with it and sent as key, word and proof, as"
          + " described in MQTT.md. Whoever may read this topic has read that token: end it on the"
          + " page and make a new one.";

  private Reply once(Word word, String by, String request, Instant now) {
    said.values().removeIf(before -> before.at.plus(MEMORY).isBefore(now));
    String mine = by + " " + request;
    Said before = said.get(mine);
    if (before != null) {
      return before.reply;
    }
    Optional<String> refusal =
        said.size() >= MOST_SAID
            ? Optional.of("Too much was said within minutes; wait a little.")
            : refusal(word, by, request, now);
    Reply reply = reply(request, refusal);
    if (refusal.isEmpty()) {
      said.put(mine, new Said(now, reply));
    }
    return reply;
  }

  private Optional<String> refusal(Word word, String by, String request, Instant now) {
    if (word.at == null || Duration.between(word.at, now).abs().compareTo(FRESH) > 0) {
      return Optional.of("at must be the present time, within two minutes of " + now + ".");
    }
    if (word.at.isBefore(since)) {
      return Optional.of("This was said before the shed began to listen; say it again.");
    }
    String say = word.say == null ? "" : word.say;
    return switch (say) {
      case "answer" ->
          word.alarm == null || word.answer == null
              ? Optional.of("alarm and answer must be there.")
              : hand.answer(word.alarm, word.answer, word.until, by, request);
      case "switch" ->
          word.room == null || word.kind == null || word.on == null || word.until == null
              ? Optional.of("room, kind, on and until must be there.")
              : hand.command(word.room, word.kind, word.on, word.until, by, request);
      case "release" ->
          word.room == null || word.kind == null
              ? Optional.of("room and kind must be there.")
              : hand.release(word.room, word.kind, by);
      default -> Optional.of("say was '" + say + "' but it must be answer, switch or release.");
    };
  }

  private static Reply reply(String request, Optional<String> refusal) {
    try {
      return new Reply(
          request,
          JSON.writeValueAsString(
              Map.of(
                  "request", request, "done", refusal.isEmpty(), "refusal", refusal.orElse(""))));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a reply cannot be written", e);
    }
  }
}
