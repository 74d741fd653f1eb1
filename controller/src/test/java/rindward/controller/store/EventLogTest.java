package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rindward.controller.store.samples.SampleLog;

/** What happened can be looked up, page by page. */
class EventLogTest {
  @RegisterExtension final OwnDatabase own = new OwnDatabase();

  @Test
  void newestAndPage_keepRoomKindAndText() {
    Database database = own.database();
    SampleLog log = new SampleLog(database);
    log.event(5_000, "curing", "weather", "it is colder outside than the heater can make good");
    log.event(6_000, null, "start", "the controller started");
    log.flush(0);

    EventLog events = new EventLog(database);
    StoredEvent started = new StoredEvent(2, 6_000, null, "start", "the controller started");
    assertThat(events.newest()).contains(started);
    assertThat(events.page("start", 0, 10_000, 0, 10)).containsExactly(started);
    assertThat(events.page("weather", 0, 10_000, 0, 10))
        .containsExactly(
            new StoredEvent(
                1,
                5_000,
                "curing",
                "weather",
                "it is colder outside than the heater can make good"));
  }

  @Test
  void page_byPage_showsEveryEventOfTheTimeOnceAlsoAtEqualTimes() {
    Database database = own.database();
    SampleLog log = new SampleLog(database);
    for (int i = 0; i < 25; i++) {
      log.event(1_000L * (i / 10), "curing", "weather", "change " + i);
    }
    log.flush(0);
    EventLog events = new EventLog(database);

    List<StoredEvent> all = new ArrayList<>();
    List<StoredEvent> page = events.page("weather", 1_000, 5_000, 0, 4);
    while (!page.isEmpty()) {
      all.addAll(page);
      StoredEvent last = page.get(page.size() - 1);
      page = events.page("weather", 1_000, last.atMillis(), last.id(), 4);
    }

    List<String> expected = new ArrayList<>();
    for (int i = 24; i >= 10; i--) {
      expected.add("change " + i);
    }
    assertThat(all.stream().map(StoredEvent::text)).containsExactlyElementsOf(expected);
  }
}
