package rindward.controller.broadcast;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words over the broker: believed when signed, fresh, new and not kept, and never otherwise. */
class IntakeTest {
  private static final Instant NOW = Instant.parse("2026-12-11T02:10:00Z");
  private static final Instant START = NOW.minusSeconds(3_600);
  private static final Path DESCRIBED = Path.of("MQTT.md");
  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** Made on the page for the description's example; it opens nothing. */
  private static final String TOKEN = "rind_c3RvcmFnZS1iYXJuLXN3aXRjaC1leGFtcGxlLW9ubHk";

  private static final String KEY = "q7Zk2LwX";
  private static final String SEEN =
      """
      {"request": "seen-0412", "at": "2026-12-11T02:09:30Z",
       "say": "answer", "alarm": "too-dry@storage", "answer": "acknowledged"}
      """;
  private static final String RELEASE =
      """
      {"request": "free-0001", "at": "2026-12-11T02:10:00Z",
       "say": "release", "room": "storage", "kind": "heater"}
      """;

  private final List<String> done = new ArrayList<>();
  private final Intake intake = from(START);

  private Intake from(Instant since) {
    return new Intake(
        key ->
            key.equals(KEY)
                ? Optional.of(new Intake.Signer("Wren", sha256(TOKEN)))
                : Optional.empty(),
        new Noting(),
        since);
  }

  private final class Noting implements Intake.Hand {
    @Override
    public Optional<String> answer(
        String alarm, String answer, @Nullable Instant until, String by, String request) {
      done.add(by + " " + answer + " " + alarm);
      return Optional.empty();
    }

    @Override
    public Optional<String> command(
        String room, String kind, boolean on, Instant until, String by, String request) {
      done.add(by + " " + kind + " " + on);
      return on ? Optional.of("The heater stays off: it is warm enough.") : Optional.empty();
    }

    @Override
    public Optional<String> release(String room, String kind, String by) {
      done.add(by + " releases " + kind);
      return Optional.empty();
    }
  }

  @Test
  void signedAndFresh_isDoneInThatPersonsName() {
    Intake.Reply reply = intake.take(signed(SEEN), false, NOW);
    assertThat(done).containsExactly("Wren acknowledged too-dry@storage");
    assertThat(reply.request()).isEqualTo("seen-0412");
    assertThat(reply.text()).contains("\"done\":true");
  }

  /** Computed once by another language's library, Python's hmac, as the page shows. */
  @Test
  void theDescriptionsExample_isWhatItSaysItIs() throws IOException {
    String published =
        Files.readAllLines(DESCRIBED).stream()
            .map(String::strip)
            .filter(line -> line.startsWith("{\"key\""))
            .findFirst()
            .orElseThrow();

    assertThat(intake.take(published, false, NOW).text()).contains("\"done\":true");
    assertThat(Files.readString(DESCRIBED)).contains("\"" + TOKEN + "\"");
  }

  @Test
  void heardASecondTime_isToldAgainAndNotDone_whateverWasSaidBetween() {
    Intake.Reply first = intake.take(signed(SEEN), false, NOW);
    intake.take(signed(RELEASE), false, NOW.plusSeconds(10));

    assertThat(intake.take(signed(SEEN), false, NOW.plusSeconds(20))).isEqualTo(first);
    assertThat(done).containsExactly("Wren acknowledged too-dry@storage", "Wren releases heater");
  }

  @Test
  void saidBeforeTheShedBeganToListen_isRefused_forItMayHaveBeenHeard() {
    Intake.Reply reply = from(NOW.minusSeconds(10)).take(signed(SEEN), false, NOW);

    assertThat(reply.text()).contains("before the shed began to listen");
    assertThat(done).isEmpty();
  }

  @Test
  void keptByTheBroker_isRefused() {
    assertThat(intake.take(signed(SEEN), true, NOW).text())
        .contains("A kept message is never carried out");
    assertThat(done).isEmpty();
  }

  @Test
  void changedOnTheWay_orByAnotherKey_isRefused() {
    String word = signed(SEEN);
    for (String other :
        List.of(
            word.replace("acknowledged", "shelved"),
            word.replace("too-dry@storage", "too-dry@curing"),
            word.replace("02:09:30", "02:09:31"),
            word.replace(KEY, "q7Zk2LwY"),
            envelope(SEEN, SignedWord.proof(sha256("rind_another"), SEEN)),
            envelope(SEEN, ""),
            envelope(SEEN, SignedWord.proof(sha256(TOKEN), SEEN).toUpperCase(Locale.ROOT)))) {
      assertThat(intake.take(other, false, NOW).text()).contains("The proof does not fit");
    }
    assertThat(done).isEmpty();
  }

  @Test
  void theTokenItself_isRefused_andItsOwnerIsToldToEndIt() {
    String bare = SEEN.replaceFirst("\\{", "{\"token\": \"" + TOKEN + "\", ");

    assertThat(intake.take(bare, false, NOW).text())
        .contains("A word carries no token any more")
        .contains("end it on the page");
    assertThat(done).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {-151, 91})
  void saidTooLongAgoOrInTheFuture_isRefused(long late) {
    assertThat(intake.take(signed(SEEN), false, NOW.plusSeconds(late)).text())
        .contains("within two minutes");
    assertThat(done).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "{", "null", "[]", "{\"request\": \"x\"}", "7", "{\"on\": \"maybe\"}"})
  void whatIsNoWord_isRefusedInASentence(String text) {
    Predicate<String> isRefused = said -> said.contains("\"done\":false") && said.contains("must");
    assertThat(intake.take(text, false, NOW).text()).matches(isRefused);
    assertThat(intake.take(signed(text), false, NOW).text()).matches(isRefused);
    assertThat(done).isEmpty();
  }

  @Test
  void aBookInsteadOfAWord_isNotEvenRead() {
    assertThat(intake.take(signed(SEEN + " ".repeat(5_000)), false, NOW).text())
        .contains("\"done\":false");
  }

  @Test
  void moreThanAPersonSays_isRefused_insteadOfForgettingWhatWasSaid() {
    for (int i = 0; i < 1_000; i++) {
      intake.take(signed(SEEN.replace("seen-0412", "seen-" + (10_000 + i))), false, NOW);
    }

    assertThat(intake.take(signed(RELEASE), false, NOW).text()).contains("Too much was said");
    assertThat(intake.take(signed(SEEN.replace("seen-0412", "seen-10000")), false, NOW).text())
        .contains("\"done\":true");
    assertThat(done).hasSize(1_000);
  }

  @Test
  void anInterlock_isToldToTheSender() {
    String text =
        """
        {"request": "heat-0001", "at": "2026-12-11T02:10:00Z",
         "say": "switch", "room": "storage", "kind": "heater", "on": true,
         "until": "2026-12-11T03:00:00Z"}
        """;
    assertThat(intake.take(signed(text), false, NOW).text()).contains("it is warm enough");
  }

  private static String signed(String word) {
    return envelope(word, SignedWord.proof(sha256(TOKEN), word));
  }

  private static String envelope(String word, String proof) {
    try {
      return JSON.writeValueAsString(Map.of("key", KEY, "word", word, "proof", proof));
    } catch (JsonProcessingException e) {
      throw new AssertionError(e);
    }
  }

  private static byte[] sha256(String token) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError(e);
    }
  }
}
