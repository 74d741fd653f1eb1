package rindward.controller;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rindward.controller.daemon.BuildVersion;
import rindward.controller.daemon.Time;
import rindward.hardware.Board;
import rindward.hardware.Probe;
import rindward.hardware.Relay;

/**
 * One list, one direction: the architecture as a test. A new noun gets its place in a list here
 * before its first class; if it has none, the design is wrong.
 */
class PackageOrderTest {

  /** Pure packages of the controller: functions of entries, samples and now. */
  private static final List<String> PURE =
      List.of(
          "crop",
          "keeping",
          "mixed",
          "tasting",
          "journal",
          "lot",
          "ledger",
          "readiness",
          "variety",
          "judge",
          "room",
          "estimate",
          "control",
          "alarm",
          "diagnosis");

  /** Edges of the controller: each may use everything pure and the edges to its left. */
  private static final List<String> EDGES =
      List.of(
          "task",
          "notice",
          "settings",
          "store",
          "exchange",
          "link",
          "desk",
          "metrics",
          "broadcast",
          "daemon",
          "page",
          "season",
          "command");

  /**
   * Large rooms have inner rooms; each uses only those to its left, a dot being the room itself.
   */
  private static final Map<String, List<String>> INNER =
      Map.of(
          "tasting", List.of(".", "design", "analysis"),
          "control", List.of(".", "rule"),
          "variety", List.of("liking", "."),
          "store", List.of(".", "samples", "copies", "current"),
          "command", List.of("base", "lot", "panel", "variety", "shed", "demo", "."));

  private static final String CONTROLLER = "rindward.controller.";

  private static final String DISTRIBUTIONS = "org.apache.commons.statistics.distribution..";
  private static final String ALGEBRA = "org.ejml..";
  private static final String OPTIMISATION = "org.hipparchus..";

  /**
   * What the pure packages may use beside each other: moist air, the values of the root, and, where
   * they enter by their door, distributions, linear algebra and optimisation.
   */
  private static final String[] PURE_FOUNDATION = {
    "java..",
    "org.jspecify..",
    "rindward.hardware",
    "rindward.hardware.air",
    DISTRIBUTIONS,
    ALGEBRA,
    OPTIMISATION
  };

  private static final JavaClasses CODE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("rindward");

  @TestFactory
  List<DynamicTest> eachPackageUsesOnlyWhatStandsToItsLeft() {
    List<String> order = new ArrayList<>(PURE);
    order.addAll(EDGES);
    List<DynamicTest> tests = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      String name = order.get(i);
      String[] right =
          order.subList(i + 1, order.size()).stream()
              .map(p -> CONTROLLER + p + "..")
              .toArray(String[]::new);
      if (right.length > 0) {
        tests.add(
            holds(
                name + " uses nothing to its right",
                noClasses()
                    .that()
                    .resideInAPackage(CONTROLLER + name + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(right)));
      }
    }
    return tests;
  }

  /** A room's inner rooms use the room before them; it does not know what is built on it. */
  @TestFactory
  List<DynamicTest> aRoomDoesNotKnowItsInnerRooms() {
    return List.of(
        holds(
            "the database does not know what is kept in it",
            noClasses()
                .that()
                .resideInAPackage(CONTROLLER + "store")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(CONTROLLER + "store.*..")));
  }

  @TestFactory
  List<DynamicTest> eachInnerRoomUsesOnlyWhatStandsToItsLeft() {
    List<DynamicTest> tests = new ArrayList<>();
    INNER.forEach(
        (room, order) -> {
          for (int i = 0; i < order.size() - 1; i++) {
            String[] right =
                order.subList(i + 1, order.size()).stream()
                    .map(inner -> inner(room, inner))
                    .toArray(String[]::new);
            tests.add(
                holds(
                    inner(room, order.get(i)) + " uses nothing to its right",
                    noClasses()
                        .that()
                        .resideInAPackage(inner(room, order.get(i)))
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(right)));
          }
        });
    return tests;
  }

  private static String inner(String room, String inner) {
    return CONTROLLER + room + (inner.equals(".") ? "" : "." + inner);
  }

  /** Who reads a name must not have to ask which of two it is. */
  @Test
  void noTwoTypesOfAModuleShareASimpleName() {
    for (String module : List.of("hardware", "dashboard", "controller")) {
      assertThat(
              CODE.stream()
                  .filter(type -> type.getPackageName().startsWith("rindward." + module))
                  .filter(type -> type.isTopLevelClass() && !type.getSimpleName().isEmpty())
                  .map(JavaClass::getSimpleName)
                  .filter(name -> !name.equals("package-info")))
          .doesNotHaveDuplicates();
    }
  }

  @TestFactory
  List<DynamicTest> pureIsPure() {
    String[] allowed =
        concat(PURE_FOUNDATION, PURE.stream().map(p -> CONTROLLER + p + "..").toList());
    return PURE.stream()
        .map(
            p ->
                holds(
                    p + " is pure",
                    classes()
                        .that()
                        .resideInAPackage(CONTROLLER + p + "..")
                        .should()
                        .onlyDependOnClassesThat()
                        .resideInAnyPackage(allowed)))
        .toList();
  }

  @TestFactory
  List<DynamicTest> theLeavesStandAlone() {
    return List.of(
        holds(
            "hardware knows neither the controller nor the dashboard",
            noClasses()
                .that()
                .resideInAPackage("rindward.hardware..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("rindward.controller..", "rindward.dashboard..")),
        holds(
            "the dashboard knows neither the controller nor the hardware",
            noClasses()
                .that()
                .resideInAPackage("rindward.dashboard..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("rindward.controller..", "rindward.hardware..")),
        holds(
            "only the desk, the daemon, the page and the commands see the dashboard",
            noClasses()
                .that()
                .resideInAPackage("rindward.controller..")
                .and()
                .resideOutsideOfPackages(
                    CONTROLLER + "desk..",
                    CONTROLLER + "daemon..",
                    CONTROLLER + "page..",
                    CONTROLLER + "command..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("rindward.dashboard..")));
  }

  @TestFactory
  List<DynamicTest> thePageHasNoHandOnAnyPart() {
    return List.of(
        holds(
            "the page touches nothing that switches or is read",
            noClasses()
                .that()
                .resideInAPackage(CONTROLLER + "page..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                    "rindward.hardware.pi4j..",
                    "rindward.hardware.wired..",
                    "rindward.hardware.linux..",
                    "rindward.hardware.mqtt..",
                    "rindward.hardware.shed..")
                .orShould()
                .dependOnClassesThat()
                .belongToAnyOf(Relay.class, Board.class, Probe.class)),
        holds(
            "the page knows of the daemon no more than the time, the version and how to end",
            noClasses()
                .that()
                .resideInAPackage(CONTROLLER + "page..")
                .should()
                .dependOnClassesThat(
                    resideInAPackage(CONTROLLER + "daemon..")
                        .and(
                            not(belongToAnyOf(Time.class, BuildVersion.class))
                                .and(not(simpleName("ShutdownStack")))))));
  }

  @TestFactory
  List<DynamicTest> eachLibraryEntersByOneDoor() {
    return List.of(
        onlyIn("com.pi4j..", "Pi4J", "rindward.hardware.pi4j.."),
        onlyIn("java.sql..", "JDBC", CONTROLLER + "store.."),
        onlyIn("org.sqlite..", "SQLite", CONTROLLER + "store.."),
        onlyIn("org.eclipse.paho..", "Paho", "rindward.hardware.mqtt.."),
        onlyIn("jakarta.mail..", "mail", CONTROLLER + "notice.."),
        onlyIn("org.tomlj..", "TOML", CONTROLLER + "settings.."),
        onlyIn("org.apache.commons.csv..", "CSV", CONTROLLER + "exchange.."),
        onlyIn(
            DISTRIBUTIONS,
            "statistics",
            CONTROLLER + "keeping..",
            CONTROLLER + "tasting..",
            CONTROLLER + "mixed.."),
        onlyIn(
            ALGEBRA, "linear algebra", CONTROLLER + "mixed..", CONTROLLER + "tasting.analysis.."),
        onlyIn(OPTIMISATION, "optimisation", CONTROLLER + "mixed.."),
        onlyIn("io.nayuki..", "QR codes", CONTROLLER + "exchange.."),
        onlyIn("picocli..", "the command line", CONTROLLER + "command.."),
        onlyIn("me.tongfei..", "progress bars", CONTROLLER + "command.."),
        onlyIn("io.micrometer..", "Micrometer", CONTROLLER + "metrics.."),
        onlyIn("at.favre.lib..", "bcrypt", "rindward.dashboard.signin.."),
        onlyIn("com.google.zxing..", "reading QR codes", "rindward.dashboard.placards.."),
        onlyIn("io.javalin..", "Javalin", "rindward.dashboard.."));
  }

  @TestFactory
  List<DynamicTest> timeIsHandedIn() {
    return List.of(
        holds(
            "a tick must see one now, so only the daemon and the commands read a clock",
            noClasses()
                .that()
                .resideInAPackage("rindward..")
                .and()
                .resideOutsideOfPackages(CONTROLLER + "daemon..", CONTROLLER + "command..")
                .should()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")),
        holds(
            "nothing sleeps but a sensor's bus, and nothing draws from an unseeded source",
            noClasses()
                .that()
                .resideInAPackage("rindward..")
                .and()
                .doNotHaveFullyQualifiedName("rindward.hardware.pi4j.ConversionPause")
                .should()
                .callMethod(Thread.class, "sleep", long.class)
                .orShould()
                .callConstructor(java.util.Random.class)));
  }

  /** Some test runners run no rule at all and report success; this one must be seen to fail. */
  @Test
  void aBrokenRuleIsNoticed() {
    JavaClasses here = new ClassFileImporter().importClasses(PackageOrderTest.class);
    ArchRule rule = noClasses().should().dependOnClassesThat().areAssignableTo(JavaClass.class);
    assertThatThrownBy(() -> rule.check(here)).isInstanceOf(AssertionError.class);
  }

  @Test
  void everyPackageOfTheControllerHasAPlaceInTheList() {
    List<String> known = new ArrayList<>(PURE);
    known.addAll(EDGES);
    List<String> found =
        CODE.stream()
            .map(JavaClass::getPackageName)
            .filter(p -> p.startsWith(CONTROLLER))
            .map(p -> p.substring(CONTROLLER.length()).split("\\.")[0])
            .distinct()
            .toList();
    assertThat(known).containsAll(found);
  }

  private static DynamicTest onlyIn(String library, String what, String... homes) {
    return holds(
        what + " is used only in " + String.join(" and ", homes),
        noClasses()
            .that()
            .resideInAPackage("rindward..")
            .and()
            .resideOutsideOfPackages(homes)
            .should()
            .dependOnClassesThat()
            .resideInAPackage(library));
  }

  private static DynamicTest holds(String name, ArchRule rule) {
    return DynamicTest.dynamicTest(name, () -> rule.allowEmptyShould(true).check(CODE));
  }

  private static String[] concat(String[] first, List<String> more) {
    List<String> all = new ArrayList<>(Arrays.asList(first));
    all.addAll(more);
    return all.toArray(String[]::new);
  }
}
