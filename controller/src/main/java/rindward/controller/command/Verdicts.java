package rindward.controller.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.Lived;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Lot;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.readiness.Readiness;
import rindward.controller.readiness.Verdict;
import rindward.controller.store.Database;
import rindward.controller.store.SampleLog;
import rindward.controller.store.SampleStore;

/** Verdicts on lots, from everything measured and said until now. */
final class Verdicts {
  private final Farm farm;
  private final SampleStore samples;

  Verdicts(Farm farm, Database database) {
    this.farm = farm;
    this.samples = new SampleStore(database, new SampleLog(database));
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
          verdict.sureness().toString());
    }

    /** Returns the verdict in a few words. */
    String words() {
      return state + (phase == null ? "" : " (" + phase + ")");
    }
  }

  /** Returns a lot with its verdict; empty if its type has left the crop guide. */
  Optional<Offer> of(Lot lot) {
    return farm.crop(lot)
        .map(
            crop -> {
              long holdMillis = farm.settings().hold().toMillis();
              List<Exposure> life = Exposure.of(lot, farm.journal(), samples::history, farm.now());
              LotAccount account = LotAccount.of(life, crop, holdMillis);
              Lived lived = Lived.of(lot, crop, life, account, holdMillis, farm.now());
              return new Offer(lot, crop, lived, Readiness.of(lot, crop, lived, farm.now()));
            });
  }

  /** Returns the verdict in full, a line each: why, what comes, what would change it, how sure. */
  List<String> lines(Verdict verdict) {
    List<String> lines = new ArrayList<>(verdict.reasons());
    verdict
        .expected()
        .ifPresent(e -> lines.add(day(e.from()) + " to " + day(e.to()) + ": " + e.what() + "."));
    lines.add(verdict.wouldChange());
    lines.add("How sure: " + verdict.sureness() + ".");
    return lines;
  }

  private String day(Instant at) {
    return at.atZone(farm.settings().zone()).toLocalDate().toString();
  }
}
