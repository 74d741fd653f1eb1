package rindward.controller.journal;

/**
 * Does something different for every kind of entry; the compiler sees to it that none is forgotten.
 */
public interface EntryVisitor<R> {
  R planted(Planted entry);

  R harvested(Harvested entry);

  R moved(Moved entry);

  R weighed(Weighed entry);

  R culled(Culled entry);

  R used(Used entry);

  R recounted(Recounted entry);

  R reserved(Reserved entry);

  R ripenessNoted(RipenessNoted entry);

  R frostNoted(FrostNoted entry);

  R kitchenTasted(KitchenTasted entry);

  R fieldDayNoted(FieldDayNoted entry);

  R offTypeNoted(OffTypeNoted entry);

  R noted(Noted entry);

  R attested(Attested entry);

  R misfitAccepted(MisfitAccepted entry);

  R withdrawn(Withdrawn entry);

  R accuracyStated(AccuracyStated entry);

  R outputTried(OutputTried entry);

  R roomAsked(RoomAsked entry);

  R alarmAnswered(AlarmAnswered entry);

  R workAnnounced(WorkAnnounced entry);

  R probeCalibrated(ProbeCalibrated entry);

  R corrected(Corrected entry);

  /** Something said of a session; {@link TastingVisitor} tells the kinds apart. */
  R tasting(Tasting entry);

  R varietyDecided(VarietyDecided entry);
}
