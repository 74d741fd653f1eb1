package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The program says which it is, and everything that names the version names the same one. */
class BuildVersionTest {
  @Test
  void told_namesVersionAndCommit() {
    assertThat(BuildVersion.told("0.2.0", "1f2e3d4")).isEqualTo("0.2.0 (commit 1f2e3d4)");
  }

  @Test
  void told_outsideARepository_saysThatTheCommitIsUnknown() {
    assertThat(BuildVersion.told("0.2.0", "")).isEqualTo("0.2.0 (commit unknown)");
  }

  @Test
  void told_asBuilt_hasNothingLeftToFillIn() {
    assertThat(BuildVersion.told()).doesNotContain("$", "@");
  }

  @Test
  void everythingThatNamesTheVersion_namesTheSame() throws IOException {
    String version = first("<version>([^<]+)</version>", "../pom.xml");
    for (String module : List.of("../hardware", ".", "../dashboard")) {
      assertThat(first("<version>([^<]+)</version>", module + "/pom.xml")).isEqualTo(version);
    }
    assertThat(first("rindward \\(([^)]+)\\)", "packaging/changelog")).isEqualTo(version);
    assertThat(first("rindward_([^_]+)_all.deb", "../hardware/README.md")).isEqualTo(version);
    assertThat(
            first(
                "\"version\": \"([^\"]+)\"",
                "../dashboard/src/main/resources/rindward/dashboard/openapi.json"))
        .isEqualTo(version);
  }

  private static String first(String pattern, String file) throws IOException {
    Matcher found = Pattern.compile(pattern).matcher(Files.readString(Path.of(file)));
    assertThat(found.find()).as(file).isTrue();
    return found.group(1);
  }
}
