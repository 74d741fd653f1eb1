package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whose the files are that the program makes: its user's, or also a group's whose folder it is. */
class OwnFileTest {
  @TempDir private Path folder;

  @Test
  void whatIsOurs_isForNobodyElse_alsoInAFolderOfAGroup() throws Exception {
    theGroups("rwxrwx---");
    OwnFile.make(folder.resolve("lock"));
    assertThat(rights("lock")).isEqualTo("rw-------");
  }

  @Test
  void whatIsShared_isTheGroups_whereTheFolderIs_andOursElsewhere() throws Exception {
    theGroups("rwxr-x---");
    OwnFile.makeShared(folder.resolve("record"));
    assertThat(rights("record")).isEqualTo("rw-------");

    theGroups("rwxrwx---");
    OwnFile.makeShared(folder.resolve("record"));
    OwnFile.makeShared(folder.resolve("copy"));
    assertThat(rights("record")).isEqualTo("rw-rw----");
    assertThat(rights("copy")).isEqualTo("rw-rw----");
  }

  private void theGroups(String rights) throws IOException {
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString(rights));
  }

  private String rights(String file) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(file)));
  }
}
