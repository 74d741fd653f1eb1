package rindward.dashboard.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Who may watch when not everybody can: so many from one address, and people who have signed in
 * before others. For any thread.
 */
final class LivePlaces {
  /** Some open pages of one household. */
  static final int MOST_OF_A_STRANGER = 8;

  static final int MOST_OF_ONE_SIGNED_IN = 16;

  private final int most;
  private final List<Place> taken = new ArrayList<>();

  private record Place(LiveClient client, String address, boolean isSignedIn) {}

  /**
   * @param most in all
   */
  LivePlaces(int most) {
    this.most = most;
  }

  /**
   * Takes a place. When none is left, that of a stranger is taken for somebody who has signed in:
   * the place of whoever has watched longest.
   *
   * @return whether there is one
   */
  boolean take(LiveClient client, String address, boolean isSignedIn) {
    Optional<Place> ended = Optional.empty();
    synchronized (this) {
      if (ofAddress(address, isSignedIn)
          >= (isSignedIn ? MOST_OF_ONE_SIGNED_IN : MOST_OF_A_STRANGER)) {
        return false;
      }
      if (taken.size() >= most) {
        ended = isSignedIn ? stranger() : Optional.empty();
        if (ended.isEmpty()) {
          return false;
        }
        taken.remove(ended.get());
      }
      taken.add(new Place(client, address, isSignedIn));
    }
    ended.ifPresent(place -> place.client().end());
    return true;
  }

  /** Gives back the place of a client; one that has none is no mistake. */
  synchronized void free(LiveClient client) {
    taken.removeIf(place -> place.client() == client);
  }

  /** Returns everybody who watches. */
  synchronized List<LiveClient> clients() {
    return taken.stream().map(Place::client).toList();
  }

  private long ofAddress(String address, boolean isSignedIn) {
    return taken.stream()
        .filter(place -> place.address().equals(address) && place.isSignedIn() == isSignedIn)
        .count();
  }

  private Optional<Place> stranger() {
    return taken.stream().filter(place -> !place.isSignedIn()).findFirst();
  }
}
