package rindward.controller.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.ledger.Accuracies;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.Lived;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Session;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.readiness.Verdict;
import rindward.controller.store.Database;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.controller.variety.Experience;
import rindward.controller.variety.Grown;
import rindward.controller.variety.VarietyName;

/**
 * Verdicts on lots, from everything measured and said until now. A lot is judged by what others of
 * its variety have shown, so one verdict reads the lives of all of them.
 */
final class Verdicts {
  private final Farm farm;
  private final SampleStore samples;
  private final Accuracies accuracies;
  private final List<Session> sessions;
  private final Map<VarietyName, Experience> experience = new HashMap<>();
  private final Map<String, Optional<Grown>> grown = new HashMap<>();

  Verdicts(Farm farm, Database database) {
    this.farm = farm;
    this.samples = new SampleStore(database, new SampleLog(database));
    this.accuracies = Accuracies.of(farm.journal());
    this.sessions = List.copyOf(farm.sessions().all());
  }

  /** A verdict as {@code --json} shows it. */
  record Answer(
      String state,
      @Nullable String phase,
      @Nullable String expected,
      @Nullable Instant from,
      @Nullable Instant to,
      List<String> reasons,
      String wouldChange,
      List<String> figures,
      String sureness) {
    static Answer of(Verdict verdict) {
      return new Answer(
          verdict.state().toString(),
          verdict.phase().orElse(null),
          verdict.expected().map(Verdict.Expected::what).orElse(null),
          verdict.expected().map(Verdict.Expected::from).orElse(null),
          verdict.expected().map(Verdict.Expected::to).orElse(null),
          verdict.reasons(),
          verdict.wouldChange(),
          verdict.yardstick().sentences(),
          verdict.sureness().toString());
    }

    /** Returns the verdict in a few words. */
    String words() {
      return state + (phase == null ? "" : " (" + phase + ")");
    }
  }

  /** Returns a lot with its verdict; empty if its type has left the crop guide. */
  Optional<Offer> of(Lot lot) {
    return grown(lot).map(g -> experience(g.name()).judge(g, farm.now()));
  }

  /** Returns a lot with what the air has done to it; empty if its type has left the guide. */
  Optional<Grown> grown(Lot lot) {
    return grown.computeIfAbsent(lot.code(), code -> lived(lot));
  }

  private Optional<Grown> lived(Lot lot) {
    return farm.crop(lot)
        .map(
            crop -> {
              long holdMillis = farm.settings().hold().toMillis();
              List<Exposure> life = Exposure.of(lot, accuracies, samples::history, farm.now());
              LotAccount account = LotAccount.of(life, crop, holdMillis);
              return new Grown(
                  lot, crop, Lived.of(lot, crop, life, account, holdMillis, farm.now()));
            });
  }

  private Experience experience(VarietyName name) {
    return experience.computeIfAbsent(
        name,
        variety ->
            Experience.of(
                farm.lots().all().stream()
                    .filter(lot -> new VarietyName(lot.crop(), lot.variety()).equals(name))
                    .map(this::grown)
                    .flatMap(Optional::stream)
                    .toList(),
                sessions));
  }

  /** Returns the verdict in full, a line each: why, what comes, what would change it, how sure. */
  List<String> lines(Verdict verdict) {
    List<String> lines = new ArrayList<>(verdict.reasons());
    verdict
        .expected()
        .ifPresent(e -> lines.add(day(e.from()) + " to " + day(e.to()) + ": " + e.what() + "."));
    lines.add(verdict.wouldChange());
    lines.addAll(verdict.yardstick().sentences());
    lines.add("How sure: " + verdict.sureness() + ".");
    return lines;
  }

  private String day(Instant at) {
    return at.atZone(farm.settings().zone()).toLocalDate().toString();
  }
}
