package rindward.controller.desk;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.FieldTexts;
import rindward.controller.journal.Misstated;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Speaker;
import rindward.controller.journal.Withdrawn;
import rindward.controller.lot.Lots;
import rindward.controller.store.EntryService;
import rindward.controller.store.EntryService.Refused;
import rindward.dashboard.lots.LotChange;
import rindward.dashboard.lots.LotRefused;
import rindward.dashboard.lots.LotRefused.Why;

/** Takes what a page says of lots to the one door. */
final class LotSaying {
  private final EntryService door;
  private final CropGuide crops;
  private final ZoneId zone;

  LotSaying(EntryService door, CropGuide crops, ZoneId zone) {
    this.door = door;
    this.crops = crops;
    this.zone = zone;
  }

  /** Returns what a helper says: the same of each lot. */
  List<Entry> entries(String kind, List<String> codes, Map<String, String> fields, Instant at)
      throws LotRefused {
    if (EntryKinds.find(kind).filter(each -> each.speaker() == Speaker.OWNER).isPresent()) {
      throw new LotRefused(Why.MALFORMED, "kind was '" + kind + "' but only the owner says that.");
    }
    return ofLots(kind, codes, fields, at);
  }

  /** Returns what an owner says: the same of each lot. */
  List<Entry> byOwner(String kind, List<String> codes, Map<String, String> fields, Instant at)
      throws LotRefused {
    return ofLots(kind, codes, fields, at);
  }

  private List<Entry> ofLots(
      String kind, List<String> codes, Map<String, String> fields, Instant at) throws LotRefused {
    Set<String> lots =
        codes.stream()
            .map(code -> code.strip().toUpperCase(Locale.ROOT))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    List<Entry> entries = new ArrayList<>();
    for (String lot : lots) {
      Map<String, String> row = new LinkedHashMap<>(fields);
      row.put("kind", kind);
      row.put("lot", lot);
      row.put("at", at.toString());
      try {
        entries.add(EntryKinds.fromTexts(new FieldTexts(row, zone, this::cropKey)));
      } catch (Misstated e) {
        throw new LotRefused(Why.MALFORMED, sentence(e));
      }
    }
    return entries;
  }

  /** Returns the correction of an entry that stands. */
  Entry correction(long id, Map<String, String> fields) throws LotRefused {
    Recorded recorded = standing(id);
    try {
      FieldTexts changes = new FieldTexts(fields, zone, UnaryOperator.identity());
      return new Corrected(id, EntryKinds.changed(recorded.entry(), changes));
    } catch (Misstated e) {
      throw new LotRefused(Why.MALFORMED, sentence(e));
    }
  }

  /** Returns what takes back entries that stand, the last first. */
  List<Entry> withdrawals(List<Long> ids, Instant at) throws LotRefused {
    List<Entry> back = new ArrayList<>();
    for (long id : new LinkedHashSet<>(ids)) {
      back.add(new Withdrawn(standing(id).entry().subject(), id, at));
    }
    Collections.reverse(back);
    return back;
  }

  /** Says it, all or nothing, and returns it as it is kept. */
  List<Recorded> say(List<Entry> entries, LotChange change, Instant now) throws LotRefused {
    String request = request(change);
    List<Refused> refusals = door.sayAll(entries, change.by(), request, change.seen(), now);
    if (!refusals.isEmpty()) {
      throw new LotRefused(
          refusals.get(0).isStale() ? Why.STALE : Why.CONTRADICTED,
          refusals.stream()
              .map(refused -> refused.sentence() + ".")
              .distinct()
              .collect(Collectors.joining(" ")));
    }
    return door.kept(request);
  }

  /** Returns what this very change has left in the journal before; empty the first time. */
  List<Recorded> before(LotChange change) {
    return door.kept(request(change));
  }

  private static String request(LotChange change) {
    return change.by() + " " + change.request();
  }

  private Recorded standing(long id) throws LotRefused {
    return Lots.standing(door.journal()).stream()
        .filter(r -> r.id() == id && r.entry() instanceof OfLot)
        .findFirst()
        .orElseThrow(
            () -> new LotRefused(Why.UNKNOWN, "There is no entry " + id + " that still stands."));
  }

  private String cropKey(String name) {
    return crops.crop(name.toLowerCase(Locale.ROOT)).map(Crop::key).orElse(name);
  }

  private static String sentence(Misstated e) {
    return e.sentence() + ".";
  }
}
