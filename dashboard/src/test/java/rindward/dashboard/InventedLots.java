package rindward.dashboard;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.lots.LikingView;
import rindward.dashboard.lots.LikingView.AgedView;
import rindward.dashboard.lots.LikingView.PointView;
import rindward.dashboard.lots.LotChange;
import rindward.dashboard.lots.LotLine;
import rindward.dashboard.lots.LotLine.CupsView;
import rindward.dashboard.lots.LotLine.CureView;
import rindward.dashboard.lots.LotLine.ExpectedView;
import rindward.dashboard.lots.LotLine.FruitsView;
import rindward.dashboard.lots.LotLine.TagView;
import rindward.dashboard.lots.LotLine.VerdictView;
import rindward.dashboard.lots.LotRefused;
import rindward.dashboard.lots.LotRefused.Why;
import rindward.dashboard.lots.LotView;
import rindward.dashboard.lots.LotView.AccountView;
import rindward.dashboard.lots.LotView.EntryView;
import rindward.dashboard.lots.LotView.FruitView;
import rindward.dashboard.lots.LotView.HoursView;
import rindward.dashboard.lots.LotView.SecondFruitView;
import rindward.dashboard.lots.LotView.StayView;
import rindward.dashboard.lots.LotView.StepView;
import rindward.dashboard.lots.LotView.SurvivalView;
import rindward.dashboard.lots.LotView.TastingView;
import rindward.dashboard.lots.LotView.WeightView;
import rindward.dashboard.lots.LotView.WeightsView;
import rindward.dashboard.lots.LotsDesk;
import rindward.dashboard.lots.LotsView;
import rindward.dashboard.lots.LotsView.ChoicesView;
import rindward.dashboard.lots.LotsView.CropView;
import rindward.dashboard.lots.LotsView.PlanView;
import rindward.dashboard.lots.SaidView;
import rindward.dashboard.rooms.ClimateDesk;
import rindward.dashboard.rooms.ClimateView;

/**
 * A few lots of which something can be said: what was said is listed and counts, versions are held
 * to, and no more fruits can go than there are.
 */
final class InventedLots implements LotsDesk {
  static final String ZONE = "Europe/London";
  private static final List<String> ROOMS = List.of("Curing room", "Keeping room");

  private final Instant at;
  private final ClimateDesk climate;
  private final List<Said> said = new ArrayList<>();
  private long last = 100;

  /** One thing that was said of one lot. */
  record Said(
      long id, String kind, String lot, Map<String, String> fields, LotChange change, Instant at) {}

  InventedLots(Instant at, ClimateDesk climate) {
    this.at = at;
    this.climate = climate;
  }

  /** Returns everything that was said and stands. */
  synchronized List<Said> said() {
    return List.copyOf(said);
  }

  /** Somebody else weighs a lot on another phone. */
  synchronized void weighElsewhere(String code) {
    LotChange change = new LotChange("Rook", "elsewhere", Map.of(), null);
    said.add(new Said(++last, "weighed", code, Map.of("weight_g", "1300"), change, at));
  }

  @Override
  public synchronized LotsView lots(boolean all, int from, int size) {
    List<LotLine> lots = lines();
    return new LotsView(
        at,
        ZONE,
        lots.size(),
        lots.stream().skip(from).limit(size).toList(),
        List.of(new PlanView("X7C", "north 4", "kabocha", "Kabocha", "Frostgate")),
        List.of(new CropView("kabocha", "Kabocha"), new CropView("onion", "Onion")),
        List.of("Curing room", "Keeping room", "porch"),
        ROOMS,
        List.of("A3A", "C4C", "E7E"),
        new ChoicesView(
            List.of("rot", "soft", "eaten-failing", "other"),
            List.of("kitchen", "sold", "panel"),
            List.of("ripe", "doubtful", "green")));
  }

  @Override
  public synchronized Optional<LotView> lot(String code) {
    return line(code.toUpperCase(Locale.ROOT)).map(this::view);
  }

  @Override
  public Optional<ClimateView> air(String code, Instant from, Instant to, int slots) {
    return line(code.toUpperCase(Locale.ROOT))
        .map(lot -> climate.climate("Curing room", from, to, slots, false));
  }

  @Override
  public synchronized SaidView say(
      String kind, List<String> codes, Map<String, String> fields, LotChange change)
      throws LotRefused {
    for (String code : codes) {
      hold(code, change);
      if (kind.equals("culled") && sound(code) < Integer.parseInt(fields.get("count"))) {
        throw new LotRefused(
            Why.CONTRADICTED,
            "count was '%s' but only %d are left.".formatted(fields.get("count"), sound(code)));
      }
      if (kind.equals("weighed") && !fields.containsKey("weight_g")) {
        throw new LotRefused(Why.MALFORMED, "weight_g was '' but it must be a whole number.");
      }
    }
    List<Long> ids = new ArrayList<>();
    for (String code : codes) {
      Instant when = change.at() == null ? at : change.at();
      said.add(new Said(++last, kind, code, fields, change, when));
      ids.add(last);
    }
    List<String> warnings =
        "porch".equals(fields.get("place"))
            ? List.of("There is no probe in porch: the time there will be unknown.")
            : List.of();
    return new SaidView(ids, lines(codes), warnings);
  }

  @Override
  public synchronized SaidView correct(long entry, Map<String, String> fields, LotChange change)
      throws LotRefused {
    Said old = find(entry);
    hold(old.lot(), change);
    Map<String, String> now = new LinkedHashMap<>(old.fields());
    now.putAll(fields);
    now.remove("at");
    last++;
    said.set(said.indexOf(old), new Said(old.id(), old.kind(), old.lot(), now, change, old.at()));
    return new SaidView(List.of(), lines(List.of(old.lot())), List.of());
  }

  @Override
  public synchronized SaidView withdraw(List<Long> entries, LotChange change) throws LotRefused {
    List<String> codes = new ArrayList<>();
    for (long entry : entries) {
      Said old = find(entry);
      hold(old.lot(), change);
      said.remove(old);
      last++;
      codes.add(old.lot());
    }
    return new SaidView(List.of(), lines(codes), List.of());
  }

  @Override
  public Instant now() {
    return at;
  }

  private void hold(String code, LotChange change) throws LotRefused {
    Long seen = change.seen().get(code);
    if (seen != null && seen != version(code)) {
      throw new LotRefused(
          Why.STALE,
          "somebody else has changed %2$s since you looked (then at version '%1$d'): look at it again."
              .formatted(seen, code));
    }
  }

  private Said find(long entry) throws LotRefused {
    return said.stream()
        .filter(s -> s.id() == entry)
        .findFirst()
        .orElseThrow(
            () -> new LotRefused(Why.UNKNOWN, "There is no entry " + entry + " that stands."));
  }

  private List<LotLine> lines(List<String> codes) {
    return lines().stream().filter(lot -> codes.contains(lot.code())).toList();
  }

  private Optional<LotLine> line(String code) {
    return lines().stream().filter(lot -> lot.code().equals(code)).findFirst();
  }

  private synchronized List<LotLine> lines() {
    List<LotLine> lots = new ArrayList<>();
    lots.add(line("D1", "delicata", "Delicata", "Striped Otter", "Keeping room", 70, 42, 1));
    lots.add(line("K4T", "kabocha", "Kabocha", "Winterglut", "Keeping room", 60, 46, 2));
    lots.add(line("B2", "butternut", "Butternut", "Late Meg", "Curing room", 6, 22, null));
    said.stream()
        .filter(s -> s.kind().equals("harvested"))
        .map(
            s ->
                line(
                    s.lot(),
                    s.fields().get("crop"),
                    "Kabocha",
                    s.fields().get("variety"),
                    s.fields().get("place"),
                    0,
                    Integer.parseInt(s.fields().get("count")),
                    null))
        .forEach(lots::add);
    return lots;
  }

  private LotLine line(
      String code,
      String crop,
      String cropName,
      String variety,
      String begin,
      int days,
      int count,
      Integer rank) {
    int lost = sum(code, "culled");
    int used = sum(code, "used");
    int sound = count - lost - used;
    String place =
        about(code)
            .filter(s -> s.kind().equals("moved"))
            .reduce((first, second) -> second)
            .map(s -> s.fields().get("place"))
            .orElse(begin);
    boolean cures = rank == null;
    return new LotLine(
        code,
        version(code),
        crop,
        cropName,
        variety,
        "ripe",
        "north 2",
        place,
        at.minus(Duration.ofDays(days)),
        days,
        new FruitsView(count, sound, sound - 3, used, lost, 0, Map.of("panel", 3)),
        new CureView(
            cures ? 0.38 : 1, cures ? 0.44 : 1, cures ? 0.5 : 1, cures ? null : at.minusSeconds(9)),
        verdict(cures, rank),
        new CupsView(
            cures ? "nothing" : "much",
            cures ? "44 % cured: its taste will say nothing of the variety." : "Cured."),
        rank,
        tags(code));
  }

  private VerdictView verdict(boolean cures, Integer rank) {
    boolean first = !cures && rank == 1;
    return new VerdictView(
        cures ? "curing" : first ? "eat-first" : "ready",
        cures ? "curing" : first ? "eat first" : "ready",
        cures ? null : "dry and mealy",
        new ExpectedView(
            cures ? "cured" : "past its best",
            at.plus(Duration.ofDays(5)),
            at.plus(Duration.ofDays(9))),
        List.of(cures ? "It has 44 % of a cure." : "Its usual life is nearly over."),
        cures ? "Warmer air would hasten it." : "A fruit that is still dry would change it.",
        "measured",
        at);
  }

  private List<TagView> tags(String code) {
    Map<String, TagView> tags = new LinkedHashMap<>();
    tags.put("tag 1", new TagView("tag 1", 1412, at.minus(Duration.ofDays(9))));
    tags.put("tag 2", new TagView("tag 2", 1380, at.minus(Duration.ofDays(8))));
    about(code)
        .filter(s -> s.kind().equals("weighed") && s.fields().containsKey("fruit"))
        .forEach(
            s -> {
              int grams = Integer.parseInt(s.fields().get("weight_g"));
              String fruit = s.fields().get("fruit");
              tags.put(fruit, new TagView(fruit, grams, s.at().plusMillis(s.id())));
            });
    return tags.values().stream().sorted(Comparator.comparing(TagView::at)).toList();
  }

  private LotView view(LotLine lot) {
    Instant begin = lot.harvestedAt();
    List<EntryView> story = new ArrayList<>();
    about(lot.code())
        .map(s -> new EntryView(s.id(), s.at(), at, s.change().by(), s.kind(), s.fields(), false))
        .forEach(s -> story.add(0, s));
    story.add(
        new EntryView(
            7,
            begin,
            begin,
            "Wren",
            "noted",
            Map.of("note", "<img src=x onerror=alert(1)> grew on the wet side"),
            true));
    return new LotView(
        at,
        ZONE,
        lot,
        List.of(
            new StayView("field", begin, begin.plusSeconds(3600), false),
            new StayView(lot.place(), begin.plusSeconds(3600), null, true)),
        List.of(
            new AccountView(
                "curing",
                240,
                6,
                24,
                new HoursView(180, 210, 222),
                new HoursView(0, 2, 5),
                new HoursView(0, 0, 1),
                new HoursView(10, 20, 24),
                new HoursView(0, 4, 6))),
        List.of(
            new WeightsView(
                "tag 1",
                1,
                List.of(
                    new WeightView(begin.plus(Duration.ofDays(1)), 1450, 0),
                    new WeightView(begin.plus(Duration.ofDays(4)), 1431, 1.31),
                    new WeightView(at, 1412, 2.62)))),
        "Loses 2.1 % of its weight in 30 days, by two weighings.",
        new SurvivalView(
            "92 % keep past day 40; 3 of 42 lost; half-life not reached by day 60.",
            60, List.of(new StepView(20, 0.97, 0.9, 0.99), new StepView(40, 0.92, 0.8, 0.97))),
        List.of(
            new TastingView(at.minusSeconds(86_400), null, 7.0, "dry, chestnut", "not yet cured"),
            new TastingView(at.minusSeconds(43_200), "first table", 6.8, "", null)),
        secondFruit(lot),
        new LikingView(
            List.of(
                new AgedView(lot.code(), 30, 6, false),
                new AgedView("K9", 45, 7, false),
                new AgedView(lot.code(), 60, 7.4, true)),
            List.of(new PointView(30, 6.1), new PointView(45, 6.9), new PointView(60, 7.3)),
            "Liked best from day 45 to 60 after harvest."),
        story);
  }

  /** One lot of the invented ones had an unripe fruit. */
  private static @Nullable SecondFruitView secondFruit(LotLine lot) {
    return lot.code().equals("K4T")
        ? new SecondFruitView(
            "A fruit of K4T was not ripe. Cook a second one beside one of D1, the same way.",
            "If it is ripe, it was that fruit rather than the lot.",
            "If it is not ripe either, it was not the cooking.",
            "second fruit of K4T",
            List.of(new FruitView("K4T", List.of("2")), new FruitView("D1", List.of("1"))),
            List.of("Wren", "Ash"),
            "baked",
            190.0,
            "",
            "",
            null,
            "")
        : null;
  }

  private int sum(String code, String kind) {
    return about(code)
        .filter(s -> s.kind().equals(kind))
        .mapToInt(s -> Integer.parseInt(s.fields().get("count")))
        .sum();
  }

  private int sound(String code) {
    return line(code).map(lot -> lot.fruits().sound()).orElse(0);
  }

  private long version(String code) {
    return about(code).mapToLong(Said::id).max().orElse(12);
  }

  private java.util.stream.Stream<Said> about(String code) {
    return said.stream().filter(s -> s.lot().equals(code));
  }
}
