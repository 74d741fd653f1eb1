package rindward.controller.desk;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Decision;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.judge.JudgedLots;
import rindward.controller.store.EntryService;
import rindward.controller.store.EntryService.Refused;
import rindward.controller.variety.VarietyName;
import rindward.controller.variety.VarietyVerdict;
import rindward.controller.variety.Yield;
import rindward.dashboard.request.Page;
import rindward.dashboard.varieties.DecisionRefused;
import rindward.dashboard.varieties.DecisionRequest;
import rindward.dashboard.varieties.VarietiesDesk;
import rindward.dashboard.varieties.VarietiesView;
import rindward.dashboard.varieties.VarietiesView.AnswerView;
import rindward.dashboard.varieties.VarietiesView.DecidedView;
import rindward.dashboard.varieties.VarietiesView.SuggestionView;
import rindward.dashboard.varieties.VarietiesView.VarietyView;

/** The varieties page: three answers a variety, the check of its type first, and the decisions. */
public final class VarietyPages implements VarietiesDesk {
  private final ZoneId zone;
  private final CropGuide crops;
  private final EntryService door;
  private final LotPages lots;
  private final InstantSource clock;

  /**
   * @param lots has judged each
   */
  public VarietyPages(
      ZoneId zone, CropGuide crops, EntryService door, LotPages lots, InstantSource clock) {
    this.zone = zone;
    this.crops = crops;
    this.door = door;
    this.lots = lots;
    this.clock = clock;
  }

  @Override
  public VarietiesView varieties(Page page) {
    JudgedLots judged = lots.judged();
    Set<VarietyName> checks = Set.copyOf(judged.checks());
    List<VarietyName> names =
        judged.varieties().stream()
            .sorted(
                Comparator.comparing((VarietyName name) -> cropName(name))
                    .thenComparing(name -> !checks.contains(name))
                    .thenComparing(VarietyName::variety))
            .toList();
    return view(page.in(names), names.size(), judged);
  }

  private VarietiesView view(List<VarietyName> shown, int total, JudgedLots judged) {
    Set<VarietyName> checks = Set.copyOf(judged.checks());
    Instant now = clock.instant();
    return new VarietiesView(
        now,
        zone.getId(),
        total,
        shown.stream()
            .map(name -> view(judged.variety(name, now), cropName(name), checks.contains(name)))
            .toList());
  }

  @Override
  public VarietiesView decide(DecisionRequest asked, String by, String request)
      throws DecisionRefused {
    Decision decision =
        Arrays.stream(Decision.values())
            .filter(d -> d.toString().equals(asked.decision().toLowerCase(Locale.ROOT)))
            .findFirst()
            .orElseThrow(
                () ->
                    new DecisionRefused(
                        "decision was '"
                            + asked.decision()
                            + "' but it must be one of "
                            + Arrays.toString(Decision.values())
                            + "."));
    String reason = asked.reason() == null ? "" : asked.reason().strip();
    VarietyDecided decided =
        new VarietyDecided(asked.crop(), asked.variety(), decision, reason, clock.instant());
    VarietyName name = new VarietyName(asked.crop(), asked.variety());
    if (!lots.judged().varieties().contains(name)) {
      throw new DecisionRefused(
          "variety was '" + asked.variety() + "' but no lot of that variety came in.");
    }
    List<Refused> refusals = door.sayAll(List.of(decided), by, by + " " + request, clock.instant());
    if (!refusals.isEmpty()) {
      throw new DecisionRefused(
          refusals.stream().map(r -> r.sentence() + ".").collect(Collectors.joining(" ")));
    }
    return view(List.of(name), 1, lots.judged());
  }

  private String cropName(VarietyName name) {
    return crops.crop(name.crop()).map(Crop::name).orElse(name.crop());
  }

  private static VarietyView view(VarietyVerdict verdict, String cropName, boolean isCheck) {
    List<String> keeps = verdict.keeping().sentences();
    Optional<VarietyDecided> decided = verdict.decided();
    return new VarietyView(
        verdict.name().crop(),
        cropName,
        verdict.name().variety(),
        isCheck,
        new AnswerView(verdict.ripening().answer().toString(), verdict.ripensBecause()),
        new AnswerView(verdict.eating().words(), verdict.eating().reasons()),
        new AnswerView(keeps.get(0), verdict.keepsBecause()),
        verdict.yield().seasons().stream().map(Yield.Season::sentence).toList(),
        Stream.concat(verdict.harmful().stream(), verdict.apart().stream()).toList(),
        verdict.besideCheck(),
        new SuggestionView(
            verdict.suggestion().decision().map(Decision::toString).orElse(null),
            verdict.suggestion().words(),
            verdict.suggestion().facts(),
            verdict.suggestion().change(),
            verdict.suggestion().how()),
        verdict.stillKeeping(),
        decided
            .map(
                d ->
                    new DecidedView(
                        d.decision().toString(), d.decision().words(), d.reason(), d.at()))
            .orElse(null));
  }
}
