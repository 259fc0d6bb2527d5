package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.units.Message;
import slabwright.words.Words;
import slabwright.work.book.BookSamples;

class ActualsCommandTest {
  private static final Words WORDS = Words.english();

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir Path folder;

  @BeforeEach
  void plan() throws IOException {
    for (String name : new String[] {"bike-workshop.site.json", "bike-wheel.svg"}) {
      Files.copy(Path.of("sample-plans", name), folder.resolve(name));
    }
    Files.writeString(folder.resolve("shop.book"), BookSamples.text().text());
  }

  private int run(String... more) {
    String[] args = new String[more.length + 2];
    args[0] = "actuals";
    args[1] = folder.resolve("bike-workshop.site.json").toString();
    System.arraycopy(more, 0, args, 2, more.length);
    return SlabwrightCommand.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  private Path file() {
    return folder.resolve("shop.book").toAbsolutePath();
  }

  private String book() throws IOException {
    return Files.readString(file());
  }

  /** The sentence of a change up to its new value. */
  private static String changed(String key, String name, String old) {
    String said = WORDS.say("work.write-back.of", key, name, old, "NEW");
    return said.substring(0, said.indexOf("NEW"));
  }

  @Test
  void old_and_new_are_shown_and_nothing_is_written_unasked() throws IOException {
    assertThat(run("--used", "topcoat=2 gal")).as(err.toString()).isZero();
    assertThat(out.toString())
        .contains(changed("coverage", "topcoat", "500 ft2/gal"))
        .contains(WORDS.say("cli.actuals.not-written", file().toString()));
    assertThat(book()).isEqualTo(BookSamples.text().text());
  }

  @Test
  void when_asked_the_new_value_is_written_and_all_comments_stay() throws IOException {
    assertThat(run("--machine", "metal 120=5 h", "--write")).as(err.toString()).isZero();
    assertThat(out.toString())
        .contains(changed("machine rate", "metal 120", "300 ft2/h"))
        .contains(WORDS.say("cli.actuals.written", file().toString()));
    assertThat(book()).isNotEqualTo(BookSamples.text().text()).contains("# for one person");
  }

  @Test
  void a_product_that_the_plan_does_not_use_is_refused() throws IOException {
    assertThat(run("--used", "varnish=2 gal", "--write")).isEqualTo(ExitCode.REFUSED.code());
    assertThat(err.toString()).contains("varnish");
    assertThat(book()).isEqualTo(BookSamples.text().text());
  }

  @Test
  void lines_of_the_book_that_can_not_be_read_are_named_by_the_job() throws IOException {
    Files.writeString(
        folder.resolve("shop.book"), BookSamples.text().with("crew", "", "hats", "3").text());
    String plan = folder.resolve("bike-workshop.site.json").toString();
    String to = folder.resolve("out").toString();
    assertThat(
            SlabwrightCommand.run(
                new PrintWriter(out), new PrintWriter(err), "job", plan, "--out", to))
        .isZero();
    Message hats = Message.of("work.book-section.is-not-known-in-and", "hats", "crew");
    assertThat(err.toString().lines().map(l -> l.replaceFirst("\\d+", "7")))
        .contains(WORDS.say("cli.job.book-fault", Message.of("work.book-fault.line", 7, hats)));
  }

  @Test
  void without_a_measure_the_command_says_what_it_wants() {
    assertThat(run()).isEqualTo(2);
    assertThat(err.toString()).contains(WORDS.say("cli.actuals.nothing-measured"));
  }
}
