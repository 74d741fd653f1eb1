package rindward.controller.store.copies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rindward.controller.store.Database;
import rindward.controller.store.Journal;
import rindward.controller.store.OwnDatabase;
import rindward.controller.store.SignInStore;
import rindward.controller.store.Soundness;
import rindward.controller.store.StoreFiles;
import rindward.controller.store.StoredChange;
import rindward.controller.store.StoredPerson;
import rindward.controller.store.StoredToken;

/** A copy on a quiet disk, a copy that cannot be made, and going on from one. */
class CopiesTest {
  private static final Instant NIGHT = Instant.parse("2026-11-25T03:00:00Z");

  @RegisterExtension final OwnDatabase own = new OwnDatabase();
  private Copies copies;
  private Database database;

  @BeforeEach
  void open() {
    database = own.database();
    copies = copies(own.folder().resolve("backups"));
    said("first");
  }

  @Test
  void make_whileOthersWrite_isOneWholeFileWithEverythingSaidBefore() throws IOException {
    Path copy = copies.make(NIGHT);
    said("later");

    assertThat(copy).hasFileName("shed-20261125T030000Z.db");
    assertThat(Soundness.flaw(copy)).isEmpty();
    assertThat(requests(copy)).containsExactly("first");
    assertThat(copies.all()).containsOnlyKeys(NIGHT);
    assertThat(copies.isDue(NIGHT.plusSeconds(60))).isFalse();
  }

  @Test
  void fileLogAndCopy_areForNobodyElseToRead() throws IOException {
    Path file = database.file();
    for (Path made : List.of(file, StoreFiles.log(file), copies.make(NIGHT))) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(made)))
          .as("%s", made)
          .isEqualTo("rw-------");
    }
  }

  @Test
  void make_takesAwayWhatAPowerCutLeftHalfDone() throws IOException {
    Path left = own.folder().resolve("backups/shed-20261124T030000Z.db.part");
    Files.createDirectories(left.getParent());
    Files.writeString(left, "half");

    copies.make(NIGHT);

    assertThat(left).doesNotExist();
  }

  @Test
  void make_folderThatCannotBe_saysSoInOneSentence() throws IOException {
    Path file = Files.writeString(own.folder().resolve("a-file"), "");

    assertThatThrownBy(() -> copies(file).make(NIGHT))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("could not be made");
  }

  @Test
  void make_databaseThatWentBad_makesNoCopyAndKeepsTheOlderOne() throws IOException {
    for (int i = 0; i < 300; i++) {
      said("entry " + i + "x".repeat(500));
    }
    Path good = copies.make(NIGHT);
    database.close();
    long bytes = Files.size(own.file());
    try (RandomAccessFile file = new RandomAccessFile(own.file().toFile(), "rw")) {
      file.seek(bytes / 2);
      file.write(new byte[8_192]);
    }

    assertThatThrownBy(() -> copies.make(NIGHT.plusSeconds(86_400)))
        .isInstanceOf(IOException.class);

    assertThat(copies.all().values()).containsExactly(good);
  }

  @Test
  void restore_putsTheCopyInPlace_andKeepsWhatWasThere() throws IOException {
    Path copy = copies.make(NIGHT);
    said("later");
    database.close();

    Path before = Restoring.restore(own.file(), copy, false, NIGHT).before().orElseThrow();

    assertThat(requests(own.file())).containsExactly("first");
    assertThat(requests(before)).containsExactly("first", "later");
    assertThat(copy).exists();
  }

  @Test
  void restore_onAnotherBoard_needsNothingButTheCopy() throws IOException {
    Path copy = copies.make(NIGHT);
    Path store = Files.createDirectory(own.folder().resolve("new-board")).resolve("shed.sqlite");

    assertThat(Restoring.restore(store, copy, false, NIGHT).before()).isEmpty();

    assertThat(requests(store)).containsExactly("first");
  }

  @Test
  void restore_endsSessionsAndTokens_andBringsNobodyBackWhoWasRemoved() throws IOException {
    SignInStore people = new SignInStore(database);
    people.keep(new StoredPerson("Wren", "owner", "old password"));
    people.keep(new StoredPerson("Rook", "helper", "password"));
    people.keep(token("Wren"));
    Path copy = copies.make(NIGHT);
    people.forget("Rook");
    people.keep(new StoredPerson("Wren", "owner", "new password"));
    people.keep(new StoredPerson("Dunnock", "reader", "password"));
    database.close();

    Restored restored = Restoring.restore(own.file(), copy, false, NIGHT);

    assertThat(restored.leftOut()).containsExactly("Rook");
    assertThat(restored.mayWork()).containsExactly("Dunnock", "Wren");
    assertThat(people.people())
        .extracting(StoredPerson::passwordHash)
        .containsExactly("password", "new password");
    assertThat(people.tokens()).isEmpty();
    assertThat(people.changes(Long.MAX_VALUE, 1))
        .singleElement()
        .extracting(StoredChange::what)
        .asString()
        .contains("every session and token ended; not brought back: Rook");
  }

  @Test
  void restore_withThePeopleOfTheCopy_bringsThemBack_butNoSession() throws IOException {
    SignInStore people = new SignInStore(database);
    people.keep(new StoredPerson("Wren", "owner", "old password"));
    people.keep(token("Wren"));
    Path copy = copies.make(NIGHT);
    people.keep(new StoredPerson("Wren", "owner", "new password"));
    database.close();

    assertThat(Restoring.restore(own.file(), copy, true, NIGHT).leftOut()).isEmpty();

    assertThat(people.people())
        .extracting(StoredPerson::passwordHash)
        .containsExactly("old password");
    assertThat(people.tokens()).isEmpty();
  }

  @Test
  void restore_inThePlaceOfADamagedDatabase_cannotKnowWhoWasRemoved_andSaysSo() throws IOException {
    SignInStore people = new SignInStore(database);
    people.keep(new StoredPerson("Wren", "owner", "password"));
    Path copy = copies.make(NIGHT);
    database.close();
    Files.writeString(own.file(), "no database ".repeat(999));

    Restored restored = Restoring.restore(own.file(), copy, false, NIGHT);

    assertThat(restored.isPeopleKnown()).isFalse();
    assertThat(restored.mayWork()).containsExactly("Wren");
  }

  private static StoredToken token(String person) {
    return new StoredToken("hash", "id", person, "owner", true, "phone", 0, Long.MAX_VALUE);
  }

  @Test
  void restore_copyThatIsNotWhole_changesNothing() throws IOException {
    Path copy = copies.make(NIGHT);
    try (RandomAccessFile file = new RandomAccessFile(copy.toFile(), "rw")) {
      file.setLength(file.length() / 2);
    }

    assertThatThrownBy(() -> Restoring.restore(own.file(), copy, false, NIGHT))
        .hasMessageStartingWith("the copy " + copy + " cannot be used: it is damaged");

    assertThat(requests(own.file())).containsExactly("first");
    try (var files = Files.list(own.folder())) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .noneMatch(name -> name.contains("restoring"));
    }
  }

  @Test
  void startCheck_lostDatabase_offersTheNewestCopy() throws IOException {
    copies.make(NIGHT);
    Path newest = copies.make(NIGHT.plusSeconds(86_400));
    database.close();
    Files.delete(own.file());

    assertThat(StartCheck.look(database, copies, NIGHT).orElseThrow())
        .startsWith("new, for the one before, " + own.file() + ", is missing or empty; ")
        .endsWith(
            "the newest copy is "
                + newest
                + ": stop the program and go on from it with 'rindward restore'");
  }

  @Test
  void startCheck_firstStartOfAll_hasNothingToSay() throws IOException {
    database.close();
    Files.delete(own.file());

    assertThat(StartCheck.look(database, copies, NIGHT)).isEmpty();
  }

  @Test
  void startCheck_wholeDatabase_isLeftAlone() {
    assertThat(StartCheck.look(database, copies, NIGHT)).isEmpty();
    assertThat(requests(own.file())).containsExactly("first");
  }

  private Copies copies(Path folder) {
    return new Copies(database, folder, ZoneOffset.UTC);
  }

  private void said(String request) {
    new Journal(database).append(request, "A3A", OptionalLong.empty(), 0, "Wren", "{}");
  }

  private List<String> requests(Path file) {
    List<String> requests = new ArrayList<>();
    try (Database other = new Database(file)) {
      new Journal(other).since(0, entry -> requests.add(entry.request()));
    }
    return requests;
  }
}
