package rindward.dashboard;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import rindward.dashboard.shed.RecordDesk;
import rindward.dashboard.shed.RecordView;
import rindward.dashboard.shed.RecordView.ProofView;
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
        List.of(new TriedView("Curing room", "Heater", at.minusSeconds(86_400), "Rook")),
        List.of(
            new ProofView(
                "Curing room",
                "the high limit opens and stays open until its button is pressed",
                List.of(
                    "on 2026-09-01 by Wren: 41.0 C, beside probe curing-air, by Rook, with a hair"
                        + " dryer",
                    "on 2025-09-04 by Wren: 40.5 C, by Rook, with a hair dryer"),
                null),
            new ProofView(
                "Curing room",
                "the residual-current devices trip by an instrument",
                List.of(),
                "Room Curing room: nobody has shown that the residual-current devices trip by an"
                    + " instrument; 'rindward commission' asks for it.")));
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
