package rindward.controller.broadcast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words over the broker: believed when signed, fresh and not kept, and never otherwise. */
class IntakeTest {
  private static final Instant NOW = Instant.parse("2026-12-11T02:10:00Z");
  private static final String SEEN =
      """
      {"token": "rind_good", "request": "seen-0412", "at": "2026-12-11T02:09:30Z",
       "say": "answer", "alarm": "too-dry@storage", "answer": "acknowledged"}
      """;

  private final List<String> done = new ArrayList<>();
  private final Intake intake =
      new Intake(
          token -> token.equals("rind_good") ? Optional.of("Wren") : Optional.empty(),
          new Noting());

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
      return Optional.of("The heater stays off: it is warm enough.");
    }

    @Override
    public Optional<String> release(String room, String kind, String by) {
      done.add(by + " releases " + kind);
      return Optional.empty();
    }
  }

  @Test
  void signedAndFresh_isDoneInThatPersonsName() {
    Intake.Reply reply = intake.take(SEEN, false, NOW);
    assertThat(done).containsExactly("Wren acknowledged too-dry@storage");
    assertThat(reply.request()).isEqualTo("seen-0412");
    assertThat(reply.text()).contains("\"done\":true");
  }

  @Test
  void heardASecondTime_isToldAgainAndNotDone_whateverWasSaidBetween() {
    String between = SEEN.replace("seen-0412", "seen-0413").replace("acknowledged", "reset");
    Intake.Reply first = intake.take(SEEN, false, NOW);
    intake.take(between, false, NOW.plusSeconds(10));

    assertThat(intake.take(SEEN, false, NOW.plusSeconds(20))).isEqualTo(first);
    assertThat(done)
        .containsExactly("Wren acknowledged too-dry@storage", "Wren reset too-dry@storage");
  }

  @Test
  void keptByTheBroker_isRefused() {
    assertThat(intake.take(SEEN, true, NOW).text()).contains("A kept message is never carried out");
    assertThat(done).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"rind_bad", "", "rind_good "})
  void anotherToken_isRefused(String token) {
    String text = SEEN.replace("rind_good", token);
    assertThat(intake.take(text, false, NOW).text()).contains("The token is wrong");
    assertThat(done).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {-151, 91})
  void saidTooLongAgoOrInTheFuture_isRefused(long late) {
    assertThat(intake.take(SEEN, false, NOW.plusSeconds(late)).text())
        .contains("within two minutes");
    assertThat(done).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "{", "null", "[]", "{\"request\": \"x\"}", "7", "{\"on\": \"maybe\"}"})
  void whatIsNoWord_isRefusedInASentence(String text) {
    assertThat(intake.take(text, false, NOW).text()).contains("\"done\":false").contains("must be");
    assertThat(done).isEmpty();
  }

  @Test
  void anInterlock_isToldToTheSender() {
    String text =
        """
        {"token": "rind_good", "request": "heat-0001", "at": "2026-12-11T02:10:00Z",
         "say": "switch", "room": "storage", "kind": "heater", "on": true,
         "until": "2026-12-11T03:00:00Z"}
        """;
    assertThat(intake.take(text, false, NOW).text()).contains("it is warm enough");
  }
}
