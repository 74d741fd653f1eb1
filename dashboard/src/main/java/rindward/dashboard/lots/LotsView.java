package rindward.dashboard.lots;

import java.time.Instant;
import java.util.List;

/**
 * The lots page in one response, and all that a phone needs to note things where there is no
 * network.
 *
 * @param zone whose days are meant, as its IANA name
 * @param total how many lots there are; {@code lots} may be a part of them
 * @param lots what is to be eaten first comes first
 * @param planned plots whose lot has not come in
 * @param crops every type of the crop guide
 * @param places the rooms in the order of the settings, then every other place in use
 * @param rooms those of the places that have probes
 * @param freeCodes codes for lots that come in unplanned
 * @param words what may be said where there is a choice
 */
public record LotsView(
    Instant at,
    String zone,
    int total,
    List<LotLine> lots,
    List<PlanView> planned,
    List<CropView> crops,
    List<String> places,
    List<String> rooms,
    List<String> freeCodes,
    ChoicesView words) {

  public LotsView {
    lots = List.copyOf(lots);
    planned = List.copyOf(planned);
    crops = List.copyOf(crops);
    places = List.copyOf(places);
    rooms = List.copyOf(rooms);
    freeCodes = List.copyOf(freeCodes);
  }

  /** One plot whose lot has not come in. */
  public record PlanView(String code, String plot, String crop, String cropName, String variety) {}

  /** One type of the crop guide. */
  public record CropView(String key, String name) {}

  /** The words among which an entry chooses. */
  public record ChoicesView(List<String> causes, List<String> purposes, List<String> grades) {
    public ChoicesView {
      causes = List.copyOf(causes);
      purposes = List.copyOf(purposes);
      grades = List.copyOf(grades);
    }
  }
}
