package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * What a step is stands in its type. Only the shop book, which is a text, is read letter by letter;
 * nothing else in the work takes a string apart, so no id and no name of a step can be.
 */
class StepTextTest {
  private static final Set<String> TAKES_APART =
      Set.of(
          "startsWith",
          "endsWith",
          "contains",
          "substring",
          "indexOf",
          "lastIndexOf",
          "split",
          "matches",
          "regionMatches");

  private static final JavaClasses WORK = new ClassFileImporter().importPackages("slabwright.work");

  @Test
  void no_class_of_the_work_beside_the_shop_book_takes_a_text_apart() {
    assertThat(takingApart(c -> !readsTheBook(c))).isEmpty();
  }

  @Test
  void the_search_sees_texts_that_are_taken_apart() {
    assertThat(takingApart(StepTextTest::readsTheBook)).isNotEmpty();
  }

  /** Tests may take texts apart: they read what people read. */
  private static boolean isOfTheProgram(JavaClass c) {
    String file = c.getFullName().replace('.', '/').replaceFirst("\\$.*", "") + ".java";
    return Files.exists(Path.of("src/main/java", file));
  }

  private static boolean readsTheBook(JavaClass c) {
    return c.getPackageName().equals("slabwright.work.book");
  }

  private static List<String> takingApart(Predicate<JavaClass> classes) {
    return WORK.stream()
        .filter(StepTextTest::isOfTheProgram)
        .filter(classes)
        .flatMap(c -> c.getAccessesFromSelf().stream())
        .filter(a -> a.getTargetOwner().isEquivalentTo(String.class))
        .filter(a -> TAKES_APART.contains(a.getName()))
        .map(JavaAccess::getDescription)
        .sorted()
        .toList();
  }
}
