package rindward.controller.desk;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.CropGuide;
import rindward.controller.desk.TasterLinks.Opened;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.lot.Cooking;
import rindward.controller.lot.Session;
import rindward.controller.lot.Stop;
import rindward.controller.lot.TakingBack;
import rindward.controller.store.EntryService;
import rindward.controller.store.EntryService.Refused;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.ServingOrders;
import rindward.controller.tasting.design.Sheet;
import rindward.dashboard.request.Page;
import rindward.dashboard.tastings.CookedRequest;
import rindward.dashboard.tastings.CupRequest;
import rindward.dashboard.tastings.EndRequest;
import rindward.dashboard.tastings.KitchenView;
import rindward.dashboard.tastings.PlanRequest;
import rindward.dashboard.tastings.PlanRequest.SampleRequest;
import rindward.dashboard.tastings.SheetView;
import rindward.dashboard.tastings.TastingRefused;
import rindward.dashboard.tastings.TastingRefused.Why;
import rindward.dashboard.tastings.TastingView;
import rindward.dashboard.tastings.TastingView.CupView;
import rindward.dashboard.tastings.TastingView.TasterView;
import rindward.dashboard.tastings.TastingsDesk;
import rindward.dashboard.tastings.TastingsView;
import rindward.dashboard.tastings.TastingsView.TastingLine;
import rindward.hardware.Thousandths;

/** The tastings pages: planned, scored, closed and judged, all through the one door. */
public final class TastingPages implements TastingsDesk {
  private static final int USUAL_CUPS = 6;

  private final ZoneId zone;
  private final CropGuide crops;
  private final EntryService door;
  private final LotPages lots;
  private final InstantSource clock;

  /**
   * @param lots has read the journal already
   */
  public TastingPages(
      ZoneId zone, CropGuide crops, EntryService door, LotPages lots, InstantSource clock) {
    this.zone = zone;
    this.crops = crops;
    this.door = door;
    this.lots = lots;
    this.clock = clock;
  }

  @Override
  public TastingsView tastings(Page page) {
    List<Session> newestFirst = new ArrayList<>(lots.told().sessions());
    Collections.reverse(newestFirst);
    return new TastingsView(
        now(),
        zone.getId(),
        newestFirst.size(),
        page.in(newestFirst).stream().map(this::line).toList());
  }

  @Override
  public Optional<TastingView> tasting(String name) {
    return find(name).map(this::view);
  }

  @Override
  public Optional<KitchenView> kitchen(String name) {
    return find(name).map(session -> kitchen().view(session));
  }

  @Override
  public Optional<SheetView> sheet(String secret) {
    return TasterLinks.open(lots.told().sessions(), secret)
        .map(o -> new TasterSheet(o, stopped(o.session())).view());
  }

  @Override
  public TastingView plan(PlanRequest plan, String by, String request) throws TastingRefused {
    List<Served> served = new ArrayList<>();
    for (SampleRequest sample : plan.samples()) {
      served.add(served(sample));
    }
    String name = plan.name().strip();
    SessionPlanned planned =
        new SessionPlanned(
            name,
            served,
            plan.tasters().stream().map(String::strip).toList(),
            said(plan.check()),
            said(plan.twice()),
            said(plan.warmUp()),
            plan.cups() == null ? USUAL_CUPS : plan.cups(),
            blinding(plan.blinding()),
            new Preparation(
                    words(plan.method()),
                    null,
                    words(plan.cut()),
                    words(plan.doneWhen()),
                    null,
                    words(plan.part()))
                .at(milli(plan.temperatureC()), milli(plan.servedAtC())),
            0,
            question(plan.main()),
            DrawKey.fresh(),
            now());
    keep(List.of(planned), by, by + " " + request);
    return tasting(name).orElseThrow();
  }

  @Override
  public KitchenView cooked(String name, CookedRequest cooked, String by, String request)
      throws TastingRefused {
    Session session = find(name).orElseThrow(TastingPages::noTasting);
    List<Entry> entries = kitchen().entries(session, cooked, now());
    if (!entries.isEmpty()) {
      keep(entries, by, by + " " + request);
    }
    return kitchen(name).orElseThrow();
  }

  @Override
  public KitchenView uncooked(String name, String sample, String fruit, String by, String request)
      throws TastingRefused {
    if (find(name).isEmpty()) {
      throw noTasting();
    }
    TakingBack back = new TakingBack(lots.told().journal());
    List<Entry> entries = back.entries(back.cooked(name, sample, fruit), now());
    if (!entries.isEmpty()) {
      keep(entries, by, by + " " + request);
    }
    return kitchen(name).orElseThrow();
  }

  @Override
  public TastingView close(String name, EndRequest end, String by, String request)
      throws TastingRefused {
    Session session = find(name).orElseThrow(TastingPages::noTasting);
    List<Entry> entries = new ArrayList<>();
    if (end.isAsPlanned()) {
      entries.addAll(new Cooking(lots.told().lots()).asPlanned(session, now()));
    }
    entries.add(new SessionClosed(name, end.isNotKnown(), now()));
    keep(entries, by, by + " " + request);
    return tasting(name).orElseThrow();
  }

  @Override
  public SheetView score(String secret, CupRequest said, String request, Instant at)
      throws TastingRefused {
    Opened opened =
        TasterLinks.open(lots.told().sessions(), secret)
            .orElseThrow(
                () ->
                    new TastingRefused(
                        Why.UNKNOWN, "This link opens no tasting. Ask for it again."));
    String taster = opened.sheet().panelist();
    keep(
        new TasterSheet(opened, Set.of()).entries(said, at),
        taster,
        opened.session().name() + " " + taster + " " + request);
    return sheet(secret).orElseThrow();
  }

  @Override
  public Instant now() {
    return clock.instant();
  }

  private TastingKitchen kitchen() {
    return new TastingKitchen(
        lots.told().lots(), new TastingResults(crops, lots.told().lots()), this::stopped);
  }

  /** Returns the samples that nobody tastes any more. */
  private Set<String> stopped(Session session) {
    return Stop.samples(session, lots.told().lots(), crops);
  }

  private static TastingRefused noTasting() {
    return new TastingRefused(Why.UNKNOWN, "There is no tasting of that name.");
  }

  private static @Nullable Attribute question(@Nullable String word) throws TastingRefused {
    if (word == null || word.isBlank()) {
      return null;
    }
    return Attribute.of(word.strip())
        .orElseThrow(
            () ->
                new TastingRefused(
                    Why.MALFORMED,
                    "main was '" + word + "' but it must be a question of the sheet."));
  }

  private static Blinding blinding(@Nullable String word) throws TastingRefused {
    if (word == null) {
      return Blinding.FULL;
    }
    return Arrays.stream(Blinding.values())
        .filter(each -> each.name().equalsIgnoreCase(word))
        .findFirst()
        .orElseThrow(
            () ->
                new TastingRefused(
                    Why.MALFORMED,
                    "blinding was '" + word + "' but it must be full, partial or open."));
  }

  private Optional<Session> find(String name) {
    return lots.told().sessions().stream().filter(s -> s.name().equals(name)).findFirst();
  }

  private void keep(List<Entry> entries, String by, String request) throws TastingRefused {
    List<Refused> refusals = door.sayAll(entries, by, request, now());
    if (!refusals.isEmpty()) {
      throw new TastingRefused(
          Why.CONTRADICTED,
          refusals.stream()
              .map(r -> r.sentence() + ".")
              .distinct()
              .collect(Collectors.joining(" ")));
    }
  }

  private Served served(SampleRequest sample) throws TastingRefused {
    String code = sample.lot().strip().toUpperCase(Locale.ROOT);
    if (lots.told().lots().find(code).isEmpty()) {
      throw new TastingRefused(
          Why.MALFORMED, "lot was '" + sample.lot() + "' but there is no lot of that code.");
    }
    List<String> fruits = sample.fruits();
    return fruits == null
        ? new Served(code, code, List.of("1"))
        : new Served(code + ":" + String.join("+", fruits), code, fruits);
  }

  private TastingLine line(Session session) {
    return new TastingLine(
        session.name(),
        session.planned().at(),
        session.closed().map(end -> end.at()).orElse(null),
        session.planned().blinding().sentence(),
        session.planned().samples().size(),
        session.planned().panelists().size(),
        session.plan().sheets().stream().mapToInt(sheet -> sheet.cups().size()).sum(),
        tasted(session).size());
  }

  private TastingView view(Session session) {
    Set<String> tasted = tasted(session);
    return new TastingView(
        now(),
        zone.getId(),
        line(session),
        preparation(session.planned().preparation()),
        session.planned().preparation().heatC(),
        session.planned().preparation().servedC(),
        session.planned().warmUp(),
        session.plan().orders().stream().map(ServingOrders::sentence).distinct().toList(),
        session.plan().sheets().stream().map(sheet -> taster(sheet, tasted)).toList(),
        session.fruitsOpen().size(),
        session
            .result()
            .map(result -> new TastingResults(crops, lots.told().lots()).view(session, result))
            .orElse(null));
  }

  private static TasterView taster(Sheet sheet, Set<String> tasted) {
    return new TasterView(
        sheet.panelist(),
        sheet.cups().stream()
            .map(cup -> new CupView(cup.code(), cup.flight() + 1, tasted.contains(cup.code())))
            .toList());
  }

  /**
   * The codes of the cups of which it was said how they are liked, or that they are bitter. Others
   * of the same food are not counted: whoever watched could tell which cups hold the same.
   */
  private static Set<String> tasted(Session session) {
    return session.scored().stream()
        .filter(s -> s.attribute() == Attribute.LIKING || s.attribute().stopsSample(s.value()))
        .map(Scored::code)
        .collect(Collectors.toSet());
  }

  private static List<String> preparation(Preparation kitchen) {
    return Stream.of(
            kitchen.method(),
            kitchen.cut(),
            kitchen.part().isEmpty() ? "" : "from " + kitchen.part(),
            kitchen.doneWhen().isEmpty() ? "" : "done when " + kitchen.doneWhen())
        .filter(part -> !part.isEmpty())
        .toList();
  }

  private static @Nullable String said(@Nullable String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }

  private static @Nullable Integer milli(@Nullable Double degreesC) {
    return degreesC == null ? null : Integer.valueOf(Thousandths.of(degreesC));
  }

  private static String words(@Nullable String text) {
    return text == null ? "" : text.strip();
  }
}
