package slabwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A graphic or a plan that points elsewhere gets nothing read there, and nobody is called. */
class OnlyNamedFilesTest {
  /** Each with a place, to another file or another computer, where %s stands. */
  private static final List<String> DRAWINGS =
      List.of(
          "<image href='%s' width='9' height='9'/>",
          "<use href='%s#a'/>",
          "<style>@import url('%s');</style>",
          "<style>@import '%s';</style>",
          "<style>@font-face{font-family:'X';src:url('%s')}</style><text font-family='X' y='9'>A</text>",
          "<style>rect{fill:url(%s#g)}</style>",
          "<rect width='9' height='9' fill='url(%s#g)'/>",
          "<rect width='9' height='9' mask='url(%s#g)' clip-path='url(%s#g)' filter='url(%s#g)'/>",
          "<linearGradient id='g' href='%s#g'/><rect width='9' height='9' fill='url(#g)'/>",
          "<filter id='f'><feImage href='%s'/></filter><rect width='9' height='9' filter='url(#f)'/>",
          "<script href='%s'/>",
          "<foreignObject width='9' height='9'><iframe src='%s'/></foreignObject>",
          "<g xml:base='%s'><use href='#a'/></g>",
          "<text><tref href='%s#a'/></text>",
          "<rect width='9' height='9' cursor='url(%s)'/>",
          "<animate href='%s#a' attributeName='x' dur='1s'/>",
          "<a href='%s'><rect width='8' height='8'/></a>",
          "<color-profile name='p' href='%s'/><rect width='9' height='9' fill='#f00 icc-color(p,1)'/>",
          "<marker id='m'><use href='%s#a'/></marker><path d='M0 0L9 9' marker-end='url(#m)'/>");

  /** What may stand before the drawing. */
  private static final List<String> HEADS =
      List.of(
          "<!DOCTYPE svg [<!ENTITY a SYSTEM '%s'>]>",
          "<!DOCTYPE svg SYSTEM '%s'>",
          "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' '%s'>",
          "<!DOCTYPE svg [<!ENTITY %% p SYSTEM '%s'> %%p;]>",
          "<?xml-stylesheet type='text/css' href='%s'?>");

  private static final List<String> PLANS =
      List.of(
          "\"underlay\":{\"file\":\"%s\",\"a\":1,\"b\":0,\"c\":0,\"d\":1,\"e\":0,\"f\":0}",
          "\"photos\":[{\"file\":\"%s\",\"area\":\"a\",\"corner\":0}]", "\"shopBook\":\"%s\"");

  private static final String AREA =
      "\"areas\":[{\"id\":\"a\",\"name\":\"A\",\"outline\":[{\"at\":[0,0]},{\"at\":[9000,0]},"
          + "{\"at\":[9000,9000]},{\"at\":[0,9000]}]%s}]";

  private static final String INLAY =
      ",\"inlays\":[{\"id\":\"i\",\"name\":\"I\",\"graphic\":\"%s\",\"at\":[4000,4000],"
          + "\"width\":\"1 m\",\"stencil\":{\"roll\":\"610 mm\"}}]";

  @TempDir Path root;

  private Path folder;
  private Path secret;

  @BeforeEach
  void a_folder_and_another_that_nobody_names() throws IOException {
    folder = Files.createDirectories(root.resolve("plan"));
    secret = Files.createDirectories(root.resolve("secret"));
    Files.writeString(
        secret.resolve("s.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><rect id='a' width='9'"
            + " height='9'/></svg>");
  }

  private List<String> places() {
    return List.of(
        secret.resolve("s.svg").toUri().toString(),
        secret.resolve("s.svg").toString(),
        "../secret/s.svg",
        "http://127.0.0.1:9/s.svg",
        "https://example.invalid/s.svg",
        "ftp://127.0.0.1/s.svg",
        "jar:" + secret.resolve("s.svg").toUri() + "!/s.svg",
        "//127.0.0.1/s.svg");
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private void graphics() throws IOException {
    int n = 0;
    for (String place : places()) {
      for (String d : DRAWINGS) {
        write(n++ + ".svg", svg("", d.replace("%s", place)));
      }
      for (String h : HEADS) {
        write(n++ + ".svg", svg(h.replace("%s", place).replace("%%", "%"), "<text>&a;</text>"));
      }
      write(n++ + ".pdf", pdf(place));
    }
  }

  private static String svg(String head, String body) {
    return head
        + "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
        + " viewBox='0 0 100 100'><rect width='50' height='60'/>"
        + body
        + "</svg>";
  }

  /** A page whose drawing and whose picture lie in another file. */
  private static String pdf(String place) {
    return String.format(
        Locale.ROOT,
        "%%PDF-1.7%n1 0 obj<</Type/Catalog/Pages 2 0 R/OpenAction<</S/URI/URI(%1$s)>>>>endobj%n"
            + "2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj%n"
            + "3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]/Contents 4 0 R"
            + "/Resources<</XObject<</F 5 0 R>>>>>>endobj%n"
            + "4 0 obj<</Length 23>>stream%n9 9 50 60 re f /F Do  %nendstream endobj%n"
            + "5 0 obj<</Type/XObject/Subtype/Form/BBox[0 0 9 9]/F(%1$s)/FFilter[]/Length 0"
            + ">>stream%n%nendstream endobj%ntrailer<</Root 1 0 R>>%n",
        place);
  }

  private void plans() throws IOException {
    int n = 0;
    for (String place : places()) {
      String quoted = place.replace("\\", "\\\\");
      for (String p : PLANS) {
        write(
            "p" + n++ + ".site.json",
            "{\"version\":2,\"name\":\"S\","
                + p.replace("%s", quoted)
                + ","
                + AREA.replace("%s", "")
                + "}");
      }
      write(
          "p" + n++ + ".site.json",
          "{\"version\":2,\"name\":\"S\"," + AREA.replace("%s", INLAY.replace("%s", quoted)) + "}");
    }
    write("q-good.site.json", "{\"version\":2,\"name\":\"S\"," + inside() + "}");
    Files.createSymbolicLink(root.resolve("plan/out.json"), secret.resolve("s.svg"));
    write(
        "p-link.site.json",
        "{\"version\":2,\"name\":\"S\","
            + AREA.replace("%s", INLAY.replace("%s", "out.json"))
            + "}");
  }

  /** All that a plan can name, named as it should be. */
  private static String inside() {
    return PLANS.stream().map(p -> p.replace("%s", "sub/a.png") + ",").reduce("", String::concat)
        + AREA.replace("%s", "");
  }

  @Test
  void nothing_is_read_elsewhere_and_nobody_is_called() throws Exception {
    graphics();
    plans();
    Process run =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-Djava.security.manager=allow",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                WalledProcess.class.getName(),
                folder.toString(),
                secret.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(run.waitFor()).isZero();
    List<String> lines = said.lines().toList();
    assertThat(lines).hasSize((DRAWINGS.size() + HEADS.size() + 1 + PLANS.size() + 1) * 8 + 3);
    assertThat(lines).allMatch(l -> l.endsWith(" []")).noneMatch(l -> l.contains(" 1 ["));
    assertThat(lines.stream().filter(l -> l.matches("p.*site.json.*")))
        .allMatch(l -> l.contains(" 3 []"));
    assertThat(lines).contains("q-good.site.json 0 []");
  }
}
