package rindward.controller.notice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A channel that fails is tried again, ever more rarely, and loses nothing that still matters. */
class DeliveryQueueTest {
  private static final long SECOND = 1_000_000_000L;

  private final List<String> sent = new ArrayList<>();
  private int attempts;
  private boolean isDown;
  private long nanos;
  private final DeliveryQueue delivery =
      new DeliveryQueue(
          new Channel() {
            @Override
            public String name() {
              return "mail";
            }

            @Override
            public void send(Notice notice) throws IOException {
              attempts++;
              if (isDown) {
                throw new IOException("the server does not answer");
              }
              sent.add(notice.subject());
            }
          });

  private void pass(int seconds) {
    for (int i = 0; i < seconds; i++) {
      nanos += SECOND;
      delivery.work(nanos);
    }
  }

  private static Notice notice(String subject) {
    return new Notice("Ada", subject, "text");
  }

  @Test
  void noticesGoOutInOrder() {
    delivery.leave(notice("one"));
    delivery.leave(notice("two"));
    pass(1);
    assertThat(sent).containsExactly("one", "two");
    assertThat(delivery.trouble()).isEmpty();
  }

  @Test
  void failingChannel_isTriedEverMoreRarely_saysSo_andCatchesUp() {
    isDown = true;
    delivery.leave(notice("one"));
    pass(1);
    assertThat(delivery.trouble()).isEqualTo("Channel mail: the server does not answer");
    pass(35);
    assertThat(attempts).isEqualTo(4);
    pass(3600);
    // Five minutes apart at most: a night of trouble is a hundred attempts, not thousands.
    assertThat(attempts).isBetween(15, 20);
    isDown = false;
    pass(300);
    assertThat(sent).containsExactly("one");
    assertThat(delivery.trouble()).isEmpty();
  }

  @Test
  void whenTooMuchGathers_theNewestStay() {
    isDown = true;
    for (int i = 0; i < 150; i++) {
      delivery.leave(notice("number " + i));
    }
    assertThat(delivery.waiting()).isEqualTo(100);
    isDown = false;
    pass(1);
    assertThat(sent).hasSize(100).startsWith("number 50").endsWith("number 149");
  }
}
