package rindward.controller.daemon;

import java.util.Map;
import java.util.function.BiPredicate;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Speaker;
import rindward.controller.store.SignInStore;
import rindward.controller.store.StoreException;
import rindward.controller.store.StoredPerson;

/**
 * Asks anew, for what has to do with a pin, whether whoever is named in the journal may say such a
 * thing: a page that lets a helper say what needs the owner has not decided it. Who is nobody of
 * the farm has said it by a command on the board itself. For any thread; reads the disk.
 */
public final class EntryAuthority implements BiPredicate<String, Speaker> {
  private static final long REMEMBERED_NANOS = 5_000_000_000L;

  private final SignInStore people;
  private final LongSupplier nanos;
  private @Nullable Map<String, Speaker> known;
  private long readNanos;

  public EntryAuthority(SignInStore people, LongSupplier nanos) {
    this.people = people;
    this.nanos = nanos;
  }

  @Override
  public synchronized boolean test(String by, Speaker least) {
    long now = nanos.getAsLong();
    if (known == null || now - readNanos > REMEMBERED_NANOS) {
      try {
        known =
            people.people().stream()
                .collect(Collectors.toMap(StoredPerson::name, person -> speaker(person.role())));
        readNanos = now;
      } catch (StoreException e) {
        return false; // Nobody can be asked.
      }
    }
    return !by.isBlank() && known.getOrDefault(by, Speaker.OWNER).compareTo(least) >= 0;
  }

  private static Speaker speaker(String role) {
    return switch (role) {
      case "owner" -> Speaker.OWNER;
      case "helper" -> Speaker.HELPER;
      default -> Speaker.PANELIST;
    };
  }
}
