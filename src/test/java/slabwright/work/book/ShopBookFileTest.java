package slabwright.work.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.units.Result;
import slabwright.work.Said;

class ShopBookFileTest {
  @TempDir Path folder;

  @Test
  void without_a_file_the_shipped_book_is_used() throws IOException {
    ShopBookFile found = ShopBookFile.find(folder, folder).orThrow();
    assertThat(found.from()).isEmpty();
    assertThat(ShopBook.of(found.text()).invented()).isTrue();
  }

  @Test
  void the_book_beside_the_plan_comes_before_the_one_at_home() throws IOException {
    Path home = Files.createDirectories(folder.resolve("home/.slabwright")).getParent();
    write(home.resolve(".slabwright/shop.book"), "home");
    assertThat(name(ShopBookFile.find(folder, home))).isEqualTo("home");
    write(folder.resolve("shop.book"), "beside");
    assertThat(name(ShopBookFile.find(folder, home))).isEqualTo("beside");
  }

  @Test
  void a_file_that_is_no_shop_book_is_named() throws IOException {
    Files.writeString(folder.resolve("shop.book"), "hello\n");
    Result<ShopBookFile> found = ShopBookFile.find(folder, folder);
    assertThat(Said.why(found)).contains("shop.book").contains("first line");
  }

  private static void write(Path file, String name) throws IOException {
    Files.writeString(file, "slabwright-shop-book 1\n[book]\nname = " + name + "\n");
  }

  private static String name(Result<ShopBookFile> found) {
    return ShopBook.of(found.orThrow().text()).name().orElseThrow();
  }
}
