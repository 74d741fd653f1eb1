package rindward.dashboard.signin;

import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpResponseException;
import io.javalin.http.UnauthorizedResponse;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Turns a name and a password into a session, and a session into a {@link Caller}. While the farm
 * has no owner, the code that was announced at the start makes one. For any thread.
 */
public final class SignIn {
  private static final Logger LOG = LoggerFactory.getLogger(SignIn.class);

  /** Logarithm of the work a password costs; each step doubles it. */
  private static final int COST = 11;

  private static final String WRONG = "The name or the password is wrong.";
  private static final String SETUP = "setup";
  private static final Throttle.Key SETUP_KEY = new Throttle.Key("name " + SETUP, SETUP, "");

  private final SignInDesk desk;
  private final InstantSource clock;
  private final Passwords passwords;
  private final Secrets secrets = new Secrets();
  private final Throttle throttle = new Throttle();
  private final Tokens tokens;
  private final People people;
  private volatile @Nullable String setupCode;

  /** Uses passwords that are slow to guess. */
  public SignIn(SignInDesk desk, InstantSource clock) {
    this(desk, clock, COST);
  }

  /**
   * As above, for tests that check many passwords.
   *
   * @param cost logarithm of the work a password costs, 4 to 31
   */
  public SignIn(SignInDesk desk, InstantSource clock, int cost) {
    this.desk = desk;
    this.clock = clock;
    this.passwords = new Passwords(cost);
    this.tokens = new Tokens(desk, secrets);
    this.people = new People(desk, passwords, tokens);
  }

  /**
   * Announces a one-time code if the farm has no owner yet. Whoever can read it, on the machine
   * itself, may become the owner; it is good until it is used or the program ends.
   */
  public void announceCode(Consumer<String> announce) {
    try {
      if (!people.hasOwner()) {
        String code = secrets.code();
        setupCode = code;
        announce.accept(code);
      }
    } catch (RuntimeException e) {
      LOG.error("Whether there is an owner is not known, so none can be made: {}", e.getMessage());
    }
  }

  /** Tells whether the farm waits for its first owner. */
  boolean needsOwner() {
    return setupCode != null && !people.hasOwner();
  }

  /** Makes the first owner and signs them in. */
  Tokens.Made setUp(String code, String name, String password, String from, String browser) {
    List<Throttle.Key> keys = List.of(new Throttle.Key(address(from), SETUP, ""), SETUP_KEY);
    boolean isLastFree = begin(keys);
    String expected = setupCode;
    String typed = code.strip().toUpperCase(Locale.ROOT);
    if (expected == null || !Secrets.same(expected, typed)) {
      failed(isLastFree, from, "the code");
      throw new ForbiddenResponse("That is not the code that the program showed when it started.");
    }
    Person owner = people.addOwner(name, password);
    setupCode = null;
    throttle.succeeded(keys);
    note(owner.name(), "became the owner, from " + from);
    return tokens.session(owner, browser, clock.instant());
  }

  /**
   * Opens a session. Wrong names and wrong passwords look alike and take as long.
   *
   * @param device what the device showed to be one of those where that person has signed in before;
   *     its tries are counted by themselves, so that no stranger's are held against it
   */
  Tokens.Made signIn(
      String name, String password, String from, String browser, @Nullable String device) {
    Optional<Person> person = people.find(name);
    List<Throttle.Key> keys =
        person.filter(known -> KnownDevice.isOf(known, device)).isPresent()
            ? List.of(key("device of " + word(name), name, person))
            : keys(name, from, person);
    boolean isLastFree = begin(keys);
    if (person.isEmpty()) {
      passwords.pretend(password);
    }
    if (person.isEmpty() || !passwords.matches(password, person.get().passwordHash())) {
      failed(isLastFree, from, person.map(Person::name).orElse("an unknown name"));
      throw new UnauthorizedResponse(WRONG);
    }
    throttle.succeeded(keys);
    note(person.get().name(), "signed in, from " + from);
    return tokens.session(person.get(), browser, clock.instant());
  }

  /** Returns what a device shows when it comes again, after somebody has signed in there. */
  String deviceOf(String name) {
    return people.find(name).map(KnownDevice::of).orElse("");
  }

  /** Sets the caller's own password, for which the old one is asked again. */
  void changePassword(Caller caller, String old, String wanted, String from) {
    Person person = people.find(caller.name()).orElseThrow(() -> new UnauthorizedResponse(WRONG));
    List<Throttle.Key> keys =
        List.of(key("session of " + caller.tokenId(), person.name(), Optional.of(person)));
    boolean isLastFree = begin(keys);
    if (!passwords.matches(old, person.passwordHash())) {
      failed(isLastFree, from, person.name());
      throw new ForbiddenResponse("The old password is wrong.");
    }
    throttle.succeeded(keys);
    people.setPassword(person, wanted, caller.tokenId());
  }

  /**
   * Draws a new password for somebody who has forgotten theirs, and ends their sessions and tokens.
   * Whoever may call this stands at the machine itself.
   *
   * @return the password, to be shown once; empty if nobody of that name is known
   */
  public Optional<String> drawPassword(String name) {
    Optional<Person> person = people.find(name);
    if (person.isEmpty()) {
      return Optional.empty();
    }
    String drawn = secrets.code();
    people.setPassword(person.get(), drawn, "");
    note(person.get().name(), "was given a new password at the machine itself");
    return Optional.of(drawn);
  }

  /** Returns whom a secret stands for, if anybody. */
  Optional<Caller> who(String secret) {
    return tokens
        .find(secret, clock.instant())
        .map(token -> new Caller(token.person(), token.role(), token.id()));
  }

  People people() {
    return people;
  }

  Tokens tokens() {
    return tokens;
  }

  Instant now() {
    return clock.instant();
  }

  /** Adds to the record of changes. */
  void note(String who, String what) {
    desk.note(new AuditEntry(0, clock.instant(), who, what));
  }

  private void failed(boolean isLastFree, String from, String whose) {
    if (isLastFree) {
      note(from, "got the password of " + whose + " wrong too often, and has to wait");
    }
  }

  /** Counts an attempt before it costs anything; tells whether the next one has to wait. */
  private boolean begin(List<Throttle.Key> keys) {
    Throttle.Attempt attempt = throttle.attempt(keys, clock.instant());
    if (!attempt.pause().isZero()) {
      long seconds = attempt.pause().plusMillis(999).toSeconds();
      throw new HttpResponseException(
          429,
          "Too many wrong attempts; the next one counts in " + seconds + " s.",
          Map.of("Retry-After", Long.toString(seconds)));
    }
    return attempt.isLastFree();
  }

  private static List<Throttle.Key> keys(String name, String from, Optional<Person> person) {
    return List.of(key(address(from), name, person), key("name " + word(name), name, person));
  }

  private static Throttle.Key key(String counted, String name, Optional<Person> person) {
    return new Throttle.Key(counted, word(name), person.map(Person::passwordHash).orElse(""));
  }

  private static String word(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  private static String address(String from) {
    return "address " + from;
  }
}
