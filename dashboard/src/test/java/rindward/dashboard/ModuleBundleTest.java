package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Modules put into one file, by their text; that the pages run from it is seen in the browser. */
class ModuleBundleTest {
  private static final ImportMap MAP =
      ImportMap.parse(
          """
          {"imports": {"ink": "/lib/ink/2/ink.js", "ink/": "/lib/ink/2/", "plot": "/lib/plot.js"}}
          """);

  @Test
  void whatIsImportedInBracesIsAskedForByItsAddress() {
    String text =
        first(
            Map.of(
                "/app.js",
                "import {\n"
                    + "  a,\n"
                    + "  b as c,\n"
                    + "} from './lib/x.js';\n"
                    + "import './lib/y.js';\n"
                    + "use(a, c);\n",
                "/lib/x.js",
                "export const a = 1;\nexport async function b() {}\nexport class D {}\n",
                "/lib/y.js",
                "begin();\n"));

    assertThat(text)
        .contains("const { a: a, b: c } = need('/lib/x.js');\nneed('/lib/y.js');\nuse(a, c);")
        .contains("'/lib/x.js': () => {\nconst a = 1;\nasync function b() {}\nclass D {}\n")
        .contains("return {\n  a: a,\n  b: b,\n  D: D,\n};")
        .endsWith("need('/app.js');\n")
        .doesNotContain("from './lib");
  }

  @Test
  void aLibraryWithoutASpaceTooManyIsUnderstood_andHandsOnWhatItImports() {
    String text =
        first(
            Map.of(
                "/app.js",
                "import { html } from 'ink';\nimport { each } from 'ink/each.js';\n",
                "/lib/ink/2/ink.js",
                "import\"./core.js\";export*from\"./core.js\";export{x as"
                    + " html,y}from\"./tags.js\";",
                "/lib/ink/2/core.js",
                "const t=globalThis;export{t as Core};\n//# sourceMappingURL=core.js.map",
                "/lib/ink/2/tags.js",
                "function n(){}export{n as x,n as y};",
                "/lib/ink/2/each.js",
                "import{Core as e}from\"./core.js\";const i=e;export{i as each};"));

    assertThat(text)
        .contains("const { html: html } = need('/lib/ink/2/ink.js');")
        .contains("need('/lib/ink/2/core.js');")
        .contains("  ...need('/lib/ink/2/core.js'),\n  html: need('/lib/ink/2/tags.js').x,\n")
        .contains("const { Core: e } = need('/lib/ink/2/core.js');const i=e;\nreturn {\n  each: i,")
        .containsOnlyOnce("'/lib/ink/2/core.js': () => {");
  }

  @Test
  void aPageThatIsImportedLaterIsABundleOfItsOwn_withoutWhatIsThereAlready() {
    Map<String, String> site =
        Map.of(
            "/app.js",
            "import './lib/x.js';\nconst load = (page) => import(page);\n",
            "/lib/x.js",
            "export const a = 1;\n",
            "/page/page.js",
            "import { a } from '../lib/x.js';\nimport './own.js';\nexport const show = () => a;\n",
            "/page/own.js",
            "const fetched = () => import('plot');\n");
    ModuleBundle first = ModuleBundle.first("/app.js", site::get, MAP);
    ModuleBundle page = ModuleBundle.further("/page/page.js", site::get, MAP, first, "/app.js");

    assertThat(first.modules()).containsExactlyInAnyOrder("/app.js", "/lib/x.js");
    assertThat(first.text()).contains("const load = (page) => import(page);");
    assertThat(page.modules()).containsExactlyInAnyOrder("/page/page.js", "/page/own.js");
    assertThat(page.text())
        .startsWith("import { add, need } from '/app.js';")
        .contains("const fetched = () => import('plot');")
        .endsWith("export const { show } = need('/page/page.js');\n");
  }

  @Test
  void dataThatIsImportedComesAlong() {
    String text =
        first(
            Map.of(
                "/app.js",
                "import list from './list.json' with { type: 'json' };\nuse(list);\n",
                "/list.json",
                "{ \"a\": [1] }\n"));

    assertThat(text)
        .contains("'/list.json': () => ({ \"a\": [1] }),\n")
        .contains("const list = need('/list.json');\nuse(list);");
  }

  @Test
  void modulesThatImportEachOtherInACircleAreNamed() {
    assertThatThrownBy(
            () -> first(Map.of("/app.js", "import './b.js';\n", "/b.js", "import './app.js';\n")))
        .hasMessage("modules must not import each other in a circle: [/app.js, /b.js] and /app.js");
  }

  @Test
  void anImportOrExportThatIsNotUnderstoodIsNamed() {
    assertThatThrownBy(() -> first(Map.of("/app.js", "export default 7;\n")))
        .hasMessage("/app.js says 'export default 7;' but a bundle knows no such import or export");
    assertThatThrownBy(() -> first(Map.of("/app.js", "import all from 'ink';\n")))
        .hasMessageStartingWith("/app.js says 'import all from 'ink';'");
  }

  @Test
  void theAddressOfALibraryIsKnownWithoutTheMap() {
    assertThat(first(Map.of("/app.js", "run(import.meta.resolve('plot'));\n")))
        .contains("run('/lib/plot.js');");
  }

  @Test
  void commentsStayBehind_butNotALicence() {
    String text =
        first(
            Map.of(
                "/app.js",
                """
                /**
                 * @license
                 * Given to all
                 */
                // What it is for.
                /** Says more. */
                const a = 'http://x'; // kept
                  /**
                   * At length.
                   */
                use(a);
                """));

    assertThat(text)
        .contains("Given to all\n */\nconst a = 'http://x'; // kept\nuse(a);\n")
        .doesNotContain("What it is for", "Says more", "At length");
  }

  @Test
  void aNameThatTheImportMapDoesNotHaveIsNamed() {
    assertThatThrownBy(() -> first(Map.of("/app.js", "import 'quill';\n")))
        .hasMessage("/app.js imports 'quill' but the import map has no such name");
  }

  private static String first(Map<String, String> site) {
    return ModuleBundle.first("/app.js", site::get, MAP).text();
  }
}
