package rindward.controller.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;

/** What is printed. */
class SheetsTest {
  private static final Instant AT = Instant.parse("2026-09-20T15:00:00Z");

  @Test
  void label_isAnImageWithTheCodeAndASquareOfTwentyOneModules() throws Exception {
    Document svg = parse(new Label("K4T", List.of("kabocha <Winter & Glut>")).svg());

    assertThat(svg.getElementsByTagName("text").item(0).getTextContent()).isEqualTo("K4T");
    assertThat(svg.getElementsByTagName("text").item(1).getTextContent())
        .isEqualTo("kabocha <Winter & Glut>");
    // Version 1 of a QR code has 21 modules a side (ISO/IEC 18004), and four of white around it.
    assertThat(
            svg.getElementsByTagName("svg")
                .item(1)
                .getAttributes()
                .getNamedItem("viewBox")
                .getNodeValue())
        .isEqualTo("0 0 29 29");
    // The three finder patterns begin with a dark module in their outer corners.
    assertThat(
            svg.getElementsByTagName("path")
                .item(0)
                .getAttributes()
                .getNamedItem("d")
                .getNodeValue())
        .contains("M4 4h", "M24 4h", "M4 24h")
        .doesNotContain("M24 24h1v1h-1zM25 24h1v1h-1zM26 24");
  }

  @Test
  void walkSheet_listsLotsThatHaveFruitsLeft_placeByPlace() {
    Lot cellar = lot("A3A", "cellar", 4, 0);
    Lot gone = lot("C3C", "cellar", 2, 2);
    Lot attic = lot("E3E", "attic", 9, 1);

    String html =
        WalkSheet.html("Hollin Bank Farm", LocalDate.of(2026, 11, 1), List.of(cellar, gone, attic));

    assertThat(html).contains("A3A", "E3E", "Hollin Bank Farm, 2026-11-01").doesNotContain("C3C");
    assertThat(html.indexOf("attic")).isLessThan(html.indexOf("cellar"));
    assertThat(html).contains("<td>E3E</td><td>kabocha</td><td>8</td>");
  }

  @Test
  void labelSheet_holdsEveryLabel() {
    String html =
        LabelSheet.html(List.of(new Label("A3A", List.of()), new Label("C3C", List.of())));

    assertThat(html).contains("<title>Lot A3A</title>", "<title>Lot C3C</title>");
  }

  private static Lot lot(String code, String place, int count, int lost) {
    List<Recorded> journal =
        lost == 0
            ? List.of(said(1, new Harvested(code, "kabocha", "", count, place, AT)))
            : List.of(
                said(1, new Harvested(code, "kabocha", "", count, place, AT)),
                said(2, new Culled(code, lost, Cause.ROT, "", AT)));
    return Lots.of(journal).find(code).orElseThrow();
  }

  private static Recorded said(long id, Entry entry) {
    return new Recorded(id, AT, "Wren", entry);
  }

  private static Document parse(String xml) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)));
  }
}
