package rindward.dashboard;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rindward.dashboard.request.Page;
import rindward.dashboard.tastings.CookedRequest;
import rindward.dashboard.tastings.CupRequest;
import rindward.dashboard.tastings.EndRequest;
import rindward.dashboard.tastings.KitchenView;
import rindward.dashboard.tastings.KitchenView.CookedView;
import rindward.dashboard.tastings.KitchenView.FilledView;
import rindward.dashboard.tastings.KitchenView.PotView;
import rindward.dashboard.tastings.KitchenView.TrayView;
import rindward.dashboard.tastings.PlanRequest;
import rindward.dashboard.tastings.ResultView;
import rindward.dashboard.tastings.ResultView.GoView;
import rindward.dashboard.tastings.ResultView.MeanView;
import rindward.dashboard.tastings.ResultView.QuestionView;
import rindward.dashboard.tastings.ResultView.SampleView;
import rindward.dashboard.tastings.SheetView;
import rindward.dashboard.tastings.SheetView.AskedView;
import rindward.dashboard.tastings.SheetView.UseView;
import rindward.dashboard.tastings.TastingRefused;
import rindward.dashboard.tastings.TastingRefused.Why;
import rindward.dashboard.tastings.TastingView;
import rindward.dashboard.tastings.TastingView.CupView;
import rindward.dashboard.tastings.TastingView.TasterView;
import rindward.dashboard.tastings.TastingsDesk;
import rindward.dashboard.tastings.TastingsView;
import rindward.dashboard.tastings.TastingsView.TastingLine;

/**
 * One tasting of two lots by two tasters, which can be scored, closed and read; more are listed.
 */
final class InventedTastings implements TastingsDesk {
  static final String NAME = "first frost";
  private static final Map<String, List<String>> CUPS =
      Map.of("Ash", List.of("417", "862"), "Rowan", List.of("350", "194"));
  private static final Map<String, String> LOT_IN =
      Map.of("417", "K4T", "862", "D1", "350", "D1", "194", "K4T");

  private final Instant at;
  private final Map<String, Map<String, Integer>> answers = new LinkedHashMap<>();
  private final Map<String, List<String>> uses = new LinkedHashMap<>();
  private final List<PlanRequest> planned = new ArrayList<>();
  private final List<String> requests = new ArrayList<>();
  private final Map<String, CookedRequest> notes = new LinkedHashMap<>();
  private Instant closedAt;
  private EndRequest ended;
  private int fruitsOpen;

  InventedTastings(Instant at) {
    this.at = at;
  }

  /** Returns the plans that were made. */
  synchronized List<PlanRequest> planned() {
    return List.copyOf(planned);
  }

  /** Returns what was said of a cup. */
  synchronized Map<String, Integer> answers(String code) {
    return answers.getOrDefault(code, Map.of());
  }

  /** Returns how many times something new was said of a cup. */
  synchronized int sayings() {
    return requests.size();
  }

  @Override
  public synchronized TastingsView tastings(Page page) {
    List<TastingLine> lines = new ArrayList<>();
    planned.forEach(p -> lines.add(0, line(p.name(), 0, null)));
    lines.add(line(NAME, answers.size(), closedAt));
    return new TastingsView(at, "Europe/London", lines.size(), page.in(lines));
  }

  @Override
  public synchronized Optional<TastingView> tasting(String name) {
    if (name.equals(NAME)) {
      return Optional.of(view(name, closedAt));
    }
    return planned.stream().anyMatch(p -> p.name().equals(name))
        ? Optional.of(view(name, null))
        : Optional.empty();
  }

  @Override
  public synchronized Optional<KitchenView> kitchen(String name) {
    return tasting(name)
        .map(
            t ->
                new KitchenView(
                    name,
                    List.of(
                        new PotView(
                            "K4T", "K4T", "Kabocha", "Winterglut", List.of("1"), cooked("K4T")),
                        new PotView(
                            "D1", "D1", "Delicata", "Striped Otter", List.of("1"), cooked("D1"))),
                    List.of(tray("Ash"), tray("Rowan")),
                    bitter()));
  }

  @Override
  public synchronized Optional<SheetView> sheet(String secret) {
    return Stream.of("Ash", "Rowan")
        .filter(taster -> secret(taster).equals(secret))
        .findFirst()
        .map(this::sheetOf);
  }

  @Override
  public synchronized TastingView plan(PlanRequest plan, String by, String request)
      throws TastingRefused {
    if (tasting(plan.name()).isPresent()) {
      throw new TastingRefused(
          Why.CONTRADICTED,
          "session was '" + plan.name() + "' but a session of that name is planned already.");
    }
    planned.add(plan);
    return view(plan.name(), null);
  }

  @Override
  public synchronized KitchenView cooked(
      String name, CookedRequest cooked, String by, String request) throws TastingRefused {
    if (notes.containsKey(cooked.sample())) {
      throw new TastingRefused(Why.CONTRADICTED, "it is noted as cooked already.");
    }
    notes.put(cooked.sample(), cooked);
    return kitchen(name).orElseThrow();
  }

  @Override
  public synchronized KitchenView uncooked(
      String name, String sample, String fruit, String by, String request) throws TastingRefused {
    if (closedAt != null) {
      throw new TastingRefused(Why.CONTRADICTED, "it is closed, and its codes have been opened.");
    }
    notes.remove(sample);
    return kitchen(name).orElseThrow();
  }

  private List<CookedView> cooked(String sample) {
    CookedRequest note = notes.get(sample);
    return note == null
        ? List.of()
        : List.of(
            new CookedView(
                "1",
                note.weightGrams(),
                note.minutes(),
                note.fleshMm(),
                note.seeds(),
                "",
                Boolean.TRUE.equals(note.freeLiquid()),
                false,
                List.of(),
                ""));
  }

  /** So many samples are scored of which nobody noted the fruits. */
  synchronized void fruitsOpen(int samples) {
    fruitsOpen = samples;
  }

  /** Returns how it was closed; null while it is under way. */
  synchronized EndRequest ended() {
    return ended;
  }

  /** Returns what was noted as cooked for a sample; null if nothing was. */
  synchronized CookedRequest note(String sample) {
    return notes.get(sample);
  }

  @Override
  public synchronized TastingView close(String name, EndRequest end, String by, String request)
      throws TastingRefused {
    ended = end;
    if (answers.isEmpty()) {
      throw new TastingRefused(Why.CONTRADICTED, "nobody has scored anything yet.");
    }
    closedAt = at;
    return view(name, closedAt);
  }

  @Override
  public synchronized SheetView score(String secret, CupRequest said, String request, Instant when)
      throws TastingRefused {
    SheetView sheet =
        sheet(secret)
            .orElseThrow(() -> new TastingRefused(Why.UNKNOWN, "This link opens no tasting."));
    if (closedAt != null) {
      throw new TastingRefused(Why.CONTRADICTED, "It was closed.");
    }
    if (sheet.cups().stream().noneMatch(cup -> cup.code().equals(said.code()))) {
      throw new TastingRefused(
          Why.CONTRADICTED, "code was '" + said.code() + "' but it must be a cup of yours.");
    }
    if (!requests.contains(request)) {
      requests.add(request);
      answers.computeIfAbsent(said.code(), code -> new LinkedHashMap<>()).putAll(said.answers());
      if (said.goodFor() != null) {
        uses.put(said.code(), said.goodFor());
      }
    }
    return sheet(secret).orElseThrow();
  }

  @Override
  public Instant now() {
    return at;
  }

  /** Returns the secret in a taster's link. */
  static String secret(String taster) {
    return "secret-of-" + taster + "-0123456789";
  }

  private List<String> bitter() {
    return answers.entrySet().stream()
        .filter(e -> e.getValue().getOrDefault("bitter", 0) == 1)
        .map(e -> LOT_IN.get(e.getKey()))
        .distinct()
        .toList();
  }

  private SheetView sheetOf(String taster) {
    return new SheetView(
        NAME,
        taster,
        closedAt == null,
        List.of(
            "Do not swallow squash that tastes bitter; spit it out.",
            "Throw away a fruit with mould, all of it."),
        "a slice of apple",
        List.of(
            new AskedView(
                "liking",
                "overall liking",
                1,
                List.of(
                    "dislike extremely",
                    "dislike very much",
                    "dislike moderately",
                    "dislike slightly",
                    "neither like nor dislike",
                    "like slightly",
                    "like moderately",
                    "like very much",
                    "like extremely"),
                false),
            new AskedView(
                "sweetness",
                "sweetness",
                1,
                List.of("none", "slight", "moderate", "strong", "very strong"),
                false),
            new AskedView("bitter", "bitter", 0, List.of("no", "yes"), true),
            new AskedView("eat-again", "would eat again", 0, List.of("no", "yes"), false)),
        List.of(new UseView("pie", "pie"), new UseView("soup", "soup")),
        CUPS.get(taster).stream()
            .map(
                code ->
                    new SheetView.CupView(
                        code,
                        1,
                        bitter().contains(LOT_IN.get(code)),
                        answers(code),
                        uses.getOrDefault(code, List.of())))
            .toList());
  }

  private TrayView tray(String taster) {
    return new TrayView(
        taster,
        "/taste/" + secret(taster),
        CUPS.get(taster).stream().map(c -> new FilledView(c, 1, LOT_IN.get(c))).toList());
  }

  private TastingLine line(String name, int scored, Instant closed) {
    return new TastingLine(
        name, at.minus(Duration.ofHours(3)), closed, "Fully blind.", 2, 2, 4, scored);
  }

  private TastingView view(String name, Instant closed) {
    return new TastingView(
        at,
        "Europe/London",
        line(name, answers.size(), closed),
        List.of("baked", "3 cm cubes"),
        190.0,
        60.0,
        "a slice of apple",
        List.of("Balanced: every sample comes equally often in every place."),
        Stream.of("Ash", "Rowan").map(this::taster).toList(),
        fruitsOpen,
        closed == null ? null : result());
  }

  private TasterView taster(String name) {
    return new TasterView(
        name, CUPS.get(name).stream().map(c -> new CupView(c, 1, answers.containsKey(c))).toList());
  }

  private static ResultView result() {
    return new ResultView(
        List.of(
            new SampleView("K4T", "K4T", "Kabocha", "Winterglut", 1, false, List.of("pie 2")),
            new SampleView("D1", "D1", "Delicata", "Striped Otter", 1, false, List.of())),
        List.of(
            new QuestionView(
                "liking",
                "overall liking",
                "main",
                1,
                9,
                "dislike extremely",
                "like extremely",
                List.of(
                    new GoView(
                        2,
                        List.of(
                            new MeanView("K4T", 7.5, 1.1, 9.0, 4.0),
                            new MeanView("D1", 5.5, null, null, null)),
                        0.5,
                        1.0,
                        List.of(List.of("K4T", "D1")),
                        List.of("K4T is liked better than D1."),
                        List.of("Exact p 0.5: 1 of 2 arrangements."))))),
        List.of("Across the goes only distances from the check are told."));
  }
}
