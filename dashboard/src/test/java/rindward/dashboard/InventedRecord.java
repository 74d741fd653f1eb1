package rindward.dashboard;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import rindward.dashboard.shed.RecordDesk;
import rindward.dashboard.shed.RecordView;
import rindward.dashboard.shed.RecordView.TriedView;

/** An invented farm's copies, made an hour ago, and the one output that was tried. */
final class InventedRecord implements RecordDesk {
  private final Instant at;

  InventedRecord(Instant at) {
    this.at = at;
  }

  @Override
  public RecordView record() {
    return new RecordView(
        at.minusSeconds(3600),
        12_400_000L,
        5,
        1,
        0,
        List.of(new TriedView("Curing room", "Heater", at.minusSeconds(86_400), "Rook")));
  }

  @Override
  public String lots() {
    return "kind,lots\r\nharvested,K4T\r\n";
  }

  @Override
  public Optional<InputStream> copy() {
    return Optional.of(new ByteArrayInputStream("a copy".getBytes(StandardCharsets.UTF_8)));
  }
}
