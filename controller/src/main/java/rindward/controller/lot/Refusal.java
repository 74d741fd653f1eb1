package rindward.controller.lot;

import static rindward.controller.journal.Wrong.text;
import static rindward.controller.journal.Wrong.whole;
import static rindward.controller.journal.Wrong.wrong;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rindward.controller.crop.Nearest;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Decision;
import rindward.controller.journal.EntryVisitor;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.MisfitAccepted;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Planted;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Recounted;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RoomAsked;
import rindward.controller.journal.Tasting;
import rindward.controller.journal.Used;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.journal.Weighed;
import rindward.controller.journal.Withdrawn;
import rindward.controller.journal.WorkAnnounced;

/** Why one entry cannot be true of its subject as it stands without it; nothing when it can. */
final class Refusal implements EntryVisitor<Optional<String>> {
  private static final Pattern CODE = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,11}");
  private static final int MOST_FRUITS = 1_000_000;
  private static final int MOST_GRAMS = 100_000_000;
  private static final int MOST_DAYS = 400;
  private static final int MOST_OFF_MILLI_C = 5_000;
  private static final int COLDEST_FROST_MILLI_C = -40_000;

  private final List<Recorded> about;
  private final Lots lots;
  private final Set<String> crops;

  /**
   * @param about everything else that was said of the same subject
   */
  Refusal(List<Recorded> about, Set<String> crops) {
    this.about = about;
    this.lots = Lots.of(about);
    this.crops = crops;
  }

  @Override
  public Optional<String> planted(Planted entry) {
    if (lots.codes().contains(entry.lot())) {
      return wrong("lot", entry.lot(), "a lot of that code exists already or is planned");
    }
    return code(entry.lot())
        .or(() -> crop(entry.crop()))
        .or(() -> text("plot", entry.plot()))
        .or(() -> whole("plants", entry.plants(), 1, MOST_FRUITS));
  }

  @Override
  public Optional<String> harvested(Harvested entry) {
    if (lots.find(entry.lot()).isPresent()) {
      return wrong("lot", entry.lot(), "a lot of that code exists already");
    }
    Planted plan = lots.plans().get(entry.lot());
    if (plan != null && !plan.crop().equals(entry.crop())) {
      return wrong("crop", entry.crop(), "plot " + plan.plot() + " was planned as " + plan.crop());
    }
    Integer grams = entry.weightGrams();
    return code(entry.lot())
        .or(() -> crop(entry.crop()))
        .or(() -> whole("count", entry.count(), 1, MOST_FRUITS))
        .or(() -> text("place", entry.place(), "it must name a room or another place"))
        .or(
            () ->
                grams == null ? Optional.empty() : whole("weight in grams", grams, 1, MOST_GRAMS));
  }

  @Override
  public Optional<String> moved(Moved entry) {
    Optional<Lot> lot = lots.find(entry.lot());
    if (lot.isPresent() && !entry.at().isAfter(lot.get().harvestedAt())) {
      return before(entry, lot.get());
    }
    Optional<Stay> elsewhere =
        lot.stream()
            .flatMap(l -> l.stays().stream())
            .filter(s -> s.from().equals(entry.at()) && !s.place().equals(entry.place()))
            .findFirst();
    if (elsewhere.isPresent()) {
      return wrong(
          "place",
          entry.place(),
          "lot "
              + entry.lot()
              + " went to "
              + elsewhere.get().place()
              + " at that very moment; undo or correct that move first");
    }
    return unknown(entry)
        .or(() -> text("place", entry.place(), "it must name a room or another place"));
  }

  @Override
  public Optional<String> weighed(Weighed entry) {
    String fruit = entry.fruit();
    return sinceHarvest(entry)
        .or(() -> fruits(entry.lot(), entry.count(), 1))
        .or(() -> whole("weight in grams", entry.grossGrams(), 1, MOST_GRAMS))
        .or(() -> whole("tare in grams", entry.tareGrams(), 0, entry.grossGrams() - 1))
        .or(
            () ->
                fruit != null && entry.count() != 1
                    ? wrong("count", entry.count(), "a tag hangs on one fruit")
                    : Optional.empty());
  }

  @Override
  public Optional<String> culled(Culled entry) {
    return sinceHarvest(entry)
        .or(() -> whole("count", entry.count(), 1, MOST_FRUITS))
        .or(() -> fruits(entry.lot(), entry.count(), 1));
  }

  @Override
  public Optional<String> used(Used entry) {
    return sinceHarvest(entry)
        .or(() -> fruits(entry.lot(), entry.count(), 1))
        .or(() -> setAside(entry.lot(), entry.purpose(), entry.count()));
  }

  @Override
  public Optional<String> recounted(Recounted entry) {
    return sinceHarvest(entry).or(() -> whole("count", entry.count(), 0, MOST_FRUITS));
  }

  @Override
  public Optional<String> reserved(Reserved entry) {
    return sinceHarvest(entry)
        .or(() -> fruits(entry.lot(), entry.count(), 0))
        .or(() -> setAside(entry.lot(), entry.purpose(), entry.count()));
  }

  @Override
  public Optional<String> ripenessNoted(RipenessNoted entry) {
    return unknown(entry)
        .or(() -> whole("days after fruit set", entry.lowDays(), 0, MOST_DAYS))
        .or(() -> whole("days after fruit set", entry.highDays(), entry.lowDays(), MOST_DAYS))
        .or(() -> whole("fruits", entry.fruits(), 0, MOST_FRUITS));
  }

  @Override
  public Optional<String> frostNoted(FrostNoted entry) {
    int t = entry.minimumMilliC();
    return unknown(entry)
        .or(
            () ->
                t > 0 || t < COLDEST_FROST_MILLI_C
                    ? wrong("minimum", t / 1000.0, "frost lies from -40 to 0 C")
                    : Optional.empty());
  }

  @Override
  public Optional<String> kitchenTasted(KitchenTasted entry) {
    return sinceHarvest(entry).or(() -> TastingRefusal.kitchen(entry));
  }

  @Override
  public Optional<String> fieldDayNoted(FieldDayNoted entry) {
    return unplanned(entry)
        .or(
            () ->
                lots.find(entry.lot())
                    .map(lot -> LocalDate.ofInstant(lot.harvestedAt(), ZoneOffset.UTC))
                    .filter(picked -> entry.day().isAfter(picked.plusDays(1)))
                    .flatMap(picked -> wrong("day", entry.day(), "it was picked on " + picked)))
        .or(() -> whole("fruits", entry.fruits(), 0, MOST_FRUITS));
  }

  @Override
  public Optional<String> offTypeNoted(OffTypeNoted entry) {
    return unknown(entry)
        .or(() -> text("what was seen", entry.text(), "say how it differs, such as 'pale rind'"));
  }

  @Override
  public Optional<String> noted(Noted entry) {
    return unplanned(entry).or(() -> text("note", entry.text()));
  }

  @Override
  public Optional<String> attested(Attested entry) {
    return sinceHarvest(entry)
        .or(() -> text("what was seen", entry.text(), "say how it looked, such as 'stem dry'"));
  }

  @Override
  public Optional<String> misfitAccepted(MisfitAccepted entry) {
    return unknown(entry);
  }

  @Override
  public Optional<String> withdrawn(Withdrawn entry) {
    return wrong("entry", entry.entry(), "what takes back another entry cannot be corrected");
  }

  @Override
  public Optional<String> accuracyStated(AccuracyStated entry) {
    return Optional.empty();
  }

  @Override
  public Optional<String> outputTried(OutputTried entry) {
    return Optional.empty();
  }

  @Override
  public Optional<String> roomAsked(RoomAsked entry) {
    return entry.refusal();
  }

  @Override
  public Optional<String> alarmAnswered(AlarmAnswered entry) {
    return entry.refusal();
  }

  @Override
  public Optional<String> workAnnounced(WorkAnnounced entry) {
    return entry.refusal();
  }

  @Override
  public Optional<String> probeCalibrated(ProbeCalibrated entry) {
    return whole("temperature", entry.temperatureMilliC(), -MOST_OFF_MILLI_C, MOST_OFF_MILLI_C)
        .or(() -> whole("humidity gain", entry.humidityGainMillionths(), 500_000, 2_000_000));
  }

  @Override
  public Optional<String> corrected(Corrected entry) {
    return wrong("entry", entry.entry(), "correct the first entry, not its correction");
  }

  @Override
  public Optional<String> tasting(Tasting entry) {
    return entry.accept(new TastingRefusal(Sessions.of(about)));
  }

  @Override
  public Optional<String> varietyDecided(VarietyDecided entry) {
    return crop(entry.crop())
        .or(() -> text("variety", entry.variety()))
        .or(
            () ->
                entry.decision() == Decision.TRY_AGAIN
                    ? text("reason", entry.reason(), "say how it is to be tried again")
                    : Optional.empty());
  }

  private Optional<String> sinceHarvest(OfLot entry) {
    return lots.find(entry.lot())
        .filter(lot -> entry.at().isBefore(lot.harvestedAt()))
        .map(lot -> before(entry, lot))
        .orElseGet(() -> unknown(entry));
  }

  private static Optional<String> before(OfLot entry, Lot lot) {
    return wrong(
        "at", entry.at(), "lot " + lot.code() + " was harvested only at " + lot.harvestedAt());
  }

  private Optional<String> unknown(OfLot entry) {
    return lots.find(entry.lot()).isPresent()
        ? Optional.empty()
        : wrong(
            "lot",
            entry.lot(),
            lots.plans().containsKey(entry.lot())
                ? "it is only planned: bring it in first with 'lot add'"
                : "there is no lot of that code");
  }

  /** Some things are said before there is a fruit, of what is only planned. */
  private Optional<String> unplanned(OfLot entry) {
    return lots.plans().containsKey(entry.lot()) ? Optional.empty() : unknown(entry);
  }

  private Optional<String> fruits(String code, int count, int least) {
    int sound = lots.find(code).map(lot -> lot.fruits().sound()).orElse(0);
    return count >= least && count <= sound
        ? Optional.empty()
        : wrong(
            "count", count, "lot " + code + " has " + sound + (sound == 1 ? " fruit" : " fruits"));
  }

  private Optional<String> setAside(String code, Purpose purpose, int count) {
    return lots.find(code).flatMap(lot -> lot.fruits().refusal(code, purpose, count));
  }

  private static Optional<String> code(String code) {
    return CODE.matcher(code).matches()
        ? Optional.empty()
        : wrong("lot", code, "it must be 1 to 12 capital letters, digits or hyphens");
  }

  private Optional<String> crop(String crop) {
    return crops.contains(crop)
        ? Optional.empty()
        : wrong(
            "crop",
            crop,
            "the crop guide has no type of that name"
                + Nearest.to(crop, crops).map(near -> "; did you mean '" + near + "'?").orElse(""));
  }
}
