package rindward.controller.store.copies;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rindward.controller.store.StoreFiles;

/** How a copy's name tells when it was made, whichever place it lies in. */
final class CopyNames {
  private static final String END = ".db";

  private final String stem;

  /**
   * @param database the name of the file that is copied
   */
  CopyNames(String database) {
    this.stem = database.replaceFirst("\\.[^.]*$", "") + "-";
  }

  /** Returns what every name begins with. */
  String stem() {
    return stem;
  }

  String of(Instant made) {
    return stem + StoreFiles.MOMENT.format(made) + END;
  }

  /** Returns when a copy of this name was made; nothing for what is none. */
  Optional<Instant> moment(String name) {
    try {
      return name.startsWith(stem) && name.endsWith(END)
          ? Optional.of(
              StoreFiles.MOMENT.parse(
                  name.substring(stem.length(), name.length() - END.length()), Instant::from))
          : Optional.empty();
    } catch (DateTimeException | IndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }

  /** Returns the names among these that are copies and are not kept any longer. */
  List<String> notKept(Collection<String> names, ZoneId zone) {
    List<Instant> made = names.stream().flatMap(name -> moment(name).stream()).toList();
    Set<Instant> kept = Rotation.kept(made, zone);
    List<String> let = new ArrayList<>();
    names.forEach(
        name -> moment(name).filter(at -> !kept.contains(at)).ifPresent(at -> let.add(name)));
    return let;
  }
}
