package slabwright.desk.start;

import java.nio.file.Path;
import java.util.function.Consumer;

/** What the first screen can lead to. */
public record StartActions(
    Runnable tape,
    Runnable picture,
    Runnable example,
    Runnable chooser,
    Consumer<Path> open,
    Consumer<Path> recover,
    Runnable language) {
  void byTape() {
    tape.run();
  }

  void byPicture() {
    picture.run();
  }

  void sample() {
    example.run();
  }

  void choose() {
    chooser.run();
  }
}
