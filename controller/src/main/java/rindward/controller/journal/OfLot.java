package rindward.controller.journal;

/** Something said of one lot. */
public sealed interface OfLot extends Entry
    permits Planted,
        Harvested,
        Moved,
        Weighed,
        Culled,
        Used,
        Recounted,
        Reserved,
        RipenessNoted,
        FrostNoted,
        KitchenTasted,
        FieldDayNoted,
        OffTypeNoted,
        Noted,
        Attested,
        MisfitAccepted,
        HarmLifted,
        Withdrawn,
        GerminationTested {
  String lot();

  @Override
  default String subject() {
    return lot();
  }
}
