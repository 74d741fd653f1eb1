package rindward.controller.lot;

import static rindward.controller.journal.FieldErrors.wrong;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.GerminationTested;
import rindward.controller.journal.HarmLifted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.MisfitAccepted;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.Planted;
import rindward.controller.journal.Recounted;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.TakenBack;
import rindward.controller.journal.Used;
import rindward.controller.journal.UsesTicked;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.journal.Weighed;
import rindward.controller.journal.Withdrawn;

/**
 * The place of every kind of entry in the story. A kind that is not listed can be said at any time
 * and tells nothing of a lot; a test sees to it that every kind about lots is listed.
 */
final class Places {
  private static final String TAKES_BACK = "what takes back another entry cannot be corrected";

  private static final Map<Class<?>, Place<?>> BY_TYPE = new HashMap<>();

  static {
    put(Planted.class, p -> p.first(Standing::isNew).then((s, e) -> s.isInGuide(e.crop())));
    put(Harvested.class, p -> p.first(Standing::canComeIn).then((s, e) -> s.isInGuide(e.crop())));
    put(Moved.class, p -> p.first(Standing::canMove).told(LotStory::moved));
    put(
        Weighed.class,
        p ->
            p.first(Standing::isHarvested)
                .then((s, e) -> s.hasFruits(e.lot(), e.count()))
                .told(LotStory::weighed));
    put(
        Culled.class,
        p ->
            p.first(Standing::isHarvested)
                .then((s, e) -> s.hasFruits(e.lot(), e.count()))
                .told(LotStory::culled));
    put(
        Used.class,
        p ->
            p.first(Standing::isHarvested)
                .then((s, e) -> s.hasFruitsFor(e.lot(), e.purpose(), e.count()))
                .told(LotStory::used));
    put(Recounted.class, p -> p.first(Standing::isHarvested).told(LotStory::recounted));
    put(
        Reserved.class,
        p ->
            p.first(Standing::isHarvested)
                .then((s, e) -> s.hasFruitsFor(e.lot(), e.purpose(), e.count()))
                .told(LotStory::reserved));
    put(RipenessNoted.class, p -> p.first(Standing::isThere).told(LotStory::ripenessNoted));
    put(FrostNoted.class, p -> p.first(Standing::isThere).told(LotStory::frostNoted));
    put(KitchenTasted.class, p -> p.first(Standing::isHarvested).told(LotStory::kitchenTasted));
    put(
        FieldDayNoted.class,
        p ->
            p.first((s, e) -> s.isThereOrPlanned(e).or(() -> s.isBeforeHarvest(e)))
                .told(LotStory::fieldDayNoted));
    put(OffTypeNoted.class, p -> p.first(Standing::isThere).told(LotStory::offTypeNoted));
    put(Noted.class, p -> p.first(Standing::isThereOrPlanned).told(LotStory::noted));
    put(Attested.class, p -> p.first(Standing::isHarvested).told(LotStory::attested));
    put(GerminationTested.class, p -> p.first(Standing::isHarvested));
    put(MisfitAccepted.class, p -> p.first(Standing::isThere).told(LotStory::misfitAccepted));
    put(HarmLifted.class, p -> p.first(Standing::isThere));
    put(Withdrawn.class, p -> p.first((s, e) -> wrong("entry", e.entry(), TAKES_BACK)));
    put(
        Corrected.class,
        p ->
            p.first(
                (s, e) ->
                    wrong("entry", e.entry(), "correct the first entry, not its correction")));

    put(SessionPlanned.class, p -> p.first((s, e) -> new SessionStanding(s).isNew(e)));
    put(
        SampleCooked.class,
        p ->
            p.first((s, e) -> new SessionStanding(s).isUnderWay(e))
                .then((s, e) -> new SessionStanding(s).isServed(e))
                .told(LotStory::cooked));
    put(
        Scored.class,
        p ->
            p.first((s, e) -> new SessionStanding(s).isUnderWay(e))
                .then((s, e) -> new SessionStanding(s).canScore(e)));
    put(
        UsesTicked.class,
        p ->
            p.first((s, e) -> new SessionStanding(s).isUnderWay(e))
                .then((s, e) -> new SessionStanding(s).canTick(e)));
    put(TakenBack.class, p -> p.first((s, e) -> wrong("entry", e.entry(), TAKES_BACK)));
    put(
        SessionClosed.class,
        p ->
            p.first((s, e) -> new SessionStanding(s).isUnderWay(e))
                .then((s, e) -> new SessionStanding(s).canClose(e)));

    put(VarietyDecided.class, p -> p.then((s, e) -> s.isInGuide(e.crop())));
  }

  private Places() {}

  /** Returns why an entry cannot stand beside what stands; nothing if it can. */
  static Optional<String> refusal(Entry entry, Standing standing) {
    Place<Entry> place = of(entry);
    return place
        .first()
        .refusal(standing, entry)
        .or(() -> EntryKinds.refusal(entry))
        .or(() -> place.then().refusal(standing, entry));
  }

  /** Tells a lot what an entry says of it. */
  static void tell(Entry entry, LotStory story) {
    of(entry).telling().tell(story, entry);
  }

  /** Tells whether a kind has a place of its own. */
  static boolean has(Class<?> kind) {
    return BY_TYPE.containsKey(kind);
  }

  /** Every place was put under the class that it takes. */
  @SuppressWarnings("unchecked")
  private static Place<Entry> of(Entry entry) {
    Place<?> place = BY_TYPE.get(entry.getClass());
    return place == null ? Place.anywhere() : (Place<Entry>) place;
  }

  private static <E extends Entry> void put(Class<E> kind, UnaryOperator<Place<E>> place) {
    BY_TYPE.put(kind, place.apply(Place.anywhere()));
  }
}
