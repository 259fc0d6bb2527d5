package slabwright.project.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.book.ShopBookFile;

class ShopBookFilesTest {
  @TempDir Path folder;

  private Path plan;
  private Path home;

  @BeforeEach
  void folders() throws IOException {
    plan = Files.createDirectory(folder.resolve("plan"));
    home = Files.createDirectory(folder.resolve("home"));
  }

  private ShopBookFile found() {
    return ShopBookFiles.find(plan, home).orThrow();
  }

  /** Writes and waits; what was told. */
  private static List<Message> write(ShopBookFile book) {
    List<Message> told = new CopyOnWriteArrayList<>();
    try (BackgroundWriter writer = new BackgroundWriter("test", Runnable::run)) {
      ShopBookFiles.write(book, writer, b -> {}, told::add);
    }
    return told;
  }

  @Test
  void without_a_book_the_example_is_taken() {
    assertThat(found().from()).isEmpty();
  }

  @Test
  void the_example_is_changed_beside_the_plan() {
    ShopBookFile example = found();
    ShopBookFile written = ShopBookFiles.changed(example, example.text(), plan);
    assertThat(write(written)).isEmpty();
    assertThat(written.from()).contains(plan.resolve(ShopBookFile.NAME));
    assertThat(found().from()).isEqualTo(written.from());
    assertThat(found().text().text()).isEqualTo(example.text().text());
  }

  @Test
  void a_book_is_changed_where_it_lies() throws IOException {
    Path own = Files.createDirectories(home.resolve(".slabwright")).resolve(ShopBookFile.NAME);
    ShopBookFile example = found();
    ShopBookFile old = new ShopBookFile(example.text(), Optional.of(own));
    assertThat(write(ShopBookFiles.changed(old, example.text(), plan))).isEmpty();
    assertThat(found().from()).contains(own);
    assertThat(plan).isEmptyDirectory();
  }

  @Test
  void a_file_that_is_no_shop_book_is_refused_by_its_name() throws IOException {
    Path book = Files.writeString(plan.resolve(ShopBookFile.NAME), "rates, somehow");
    var read = ShopBookFiles.find(plan, home);
    assertThat(Words.english().say(((Result.Refused<?>) read).message()))
        .startsWith(book.toString());
  }

  @Test
  void a_book_that_cannot_be_written_is_told_with_its_place() throws IOException {
    Path book = plan.resolve(ShopBookFile.NAME);
    ShopBookFile example = found();
    Files.createDirectories(book.resolve("in the way"));
    List<Message> told = write(ShopBookFiles.changed(example, example.text(), plan));
    assertThat(told).extracting(Message::key).containsExactly("project.plan.book-not-written");
    assertThat(told.get(0).values()).startsWith(book.toString());
  }
}
