package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PictureCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir Path folder;

  private Path plan;
  private Path png;

  @BeforeEach
  void planInAFolderOfItsOwn() throws IOException {
    plan = folder.resolve("bike-workshop.site.json");
    png = folder.resolve("floor.png");
    for (String name : new String[] {"bike-workshop.site.json", "bike-wheel.svg"}) {
      Files.copy(Path.of("sample-plans", name), folder.resolve(name));
    }
  }

  private int run(String... more) {
    String[] args = new String[more.length + 4];
    args[0] = "picture";
    args[1] = plan.toString();
    args[2] = "--out";
    args[3] = png.toString();
    System.arraycopy(more, 0, args, 4, more.length);
    return SlabwrightCommand.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  /** A grey photo, and a plan that knows four points in it. */
  private Path photo() throws IOException {
    BufferedImage grey = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
    grey.createGraphics().fillRect(0, 0, 300, 200);
    Path file = folder.resolve("hall.png");
    ImageIO.write(grey, "png", file.toFile());
    ObjectMapper json = new ObjectMapper();
    ObjectNode root = (ObjectNode) json.readTree(plan.toFile());
    ObjectNode photo = root.putObject("clientPhoto");
    photo.put("file", "hall.png");
    ArrayNode points = photo.putArray("points");
    point(points, "20", "190", "1 m", "0.5 m");
    point(points, "280", "190", "5 m", "0.5 m");
    point(points, "200", "90", "5 m", "4 m");
    point(points, "100", "90", "1 m", "4 m");
    json.writeValue(plan.toFile(), root);
    return file;
  }

  private static void point(ArrayNode points, String x, String y, String east, String north) {
    ObjectNode p = points.addObject();
    p.putArray("picture").add(Double.parseDouble(x)).add(Double.parseDouble(y));
    p.putArray("floor").add(east).add(north);
  }

  @Test
  void a_picture_is_written_and_says_that_the_sample_panel_decides() throws IOException {
    assertThat(run("--pixels", "300")).isZero();
    BufferedImage image = ImageIO.read(png.toFile());
    assertThat(Math.max(image.getWidth(), image.getHeight())).isBetween(299, 301);
    assertThat(out.toString())
        .containsPattern(
            Spoken.of(
                "cli.picture.written", "Workshop", image.getWidth(), image.getHeight(), png + ""))
        .containsPattern(Spoken.of("project.picture.what-to-expect"));
    assertThat(new String(Files.readAllBytes(png), StandardCharsets.ISO_8859_1))
        .containsPattern(Spoken.of("project.picture.what-to-expect"));
  }

  @Test
  void the_view_from_the_door_is_another_picture_and_made_twice_the_same_file() throws IOException {
    assertThat(run("--pixels", "300")).isZero();
    byte[] plan = Files.readAllBytes(png);
    assertThat(run("--pixels", "300", "--from-door")).isZero();
    byte[] door = Files.readAllBytes(png);
    assertThat(run("--pixels", "300", "--from-door")).isZero();
    assertThat(Files.readAllBytes(png)).isEqualTo(door).isNotEqualTo(plan);
  }

  @Test
  void a_photo_keeps_its_size_and_gets_the_floor() throws IOException {
    Path photo = photo();
    assertThat(run("--photo", photo.toString())).as(err.toString()).isZero();
    BufferedImage image = ImageIO.read(png.toFile());
    assertThat(image.getWidth()).isEqualTo(300);
    assertThat(image.getRGB(150, 20) & 0xffffff).as("no floor up there").isEqualTo(0xffffff);
    assertThat(image.getRGB(150, 150) & 0xffffff).isNotEqualTo(0xffffff);
  }

  @Test
  void a_photo_of_which_the_plan_knows_no_points_is_refused() {
    assertThat(run("--photo", "hall.jpg")).isEqualTo(ExitCode.REFUSED.code());
    assertThat(err.toString()).containsPattern(Spoken.of("project.picture.no-points"));
    assertThat(png).doesNotExist();
  }

  @Test
  void a_photo_that_is_not_there_or_no_picture_is_refused_by_name() throws IOException {
    photo();
    assertThat(run("--photo", folder.resolve("no.jpg").toString()))
        .isEqualTo(ExitCode.REFUSED.code());
    assertThat(err.toString()).contains("no.jpg");
    assertThat(run("--photo", plan.toString())).isEqualTo(ExitCode.REFUSED.code());
    assertThat(err.toString()).contains("picture");
    assertThat(png).doesNotExist();
  }

  @Test
  void another_kind_of_file_is_not_written_over() throws IOException {
    Files.writeString(png, "a letter");
    assertThat(run()).isEqualTo(ExitCode.REFUSED.code());
    assertThat(Files.readString(png)).isEqualTo("a letter");
  }

  @Test
  void a_floor_or_a_size_that_can_not_be_is_refused() {
    assertThat(run("--area", "attic")).isEqualTo(ExitCode.REFUSED.code());
    assertThat(err.toString())
        .containsPattern(Spoken.of("project.picture.no-such-floor", "attic", "workshop"));
    assertThat(run("--pixels", "9")).isEqualTo(ExitCode.REFUSED.code());
    assertThat(err.toString()).containsPattern(Spoken.of("cli.picture.pixels", 100, 8000));
  }

  @Test
  void two_views_at_once_are_wrong_use() {
    assertThat(run("--from-door", "--photo", "x.png")).isEqualTo(ExitCode.USAGE.code());
  }
}
