package slabwright.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.DeskSettings;

/** Begins each question for a file in the folder of the last answer. */
final class FolderMemory implements Chooser {
  private final Chooser asks;
  private final DeskSettings settings;

  FolderMemory(Chooser asks, DeskSettings settings) {
    this.asks = asks;
    this.settings = settings;
  }

  private Optional<Path> asked(Supplier<Optional<Path>> question, boolean file) {
    settings.folder().filter(Files::isDirectory).ifPresent(asks::beginIn);
    Optional<Path> answer = question.get();
    answer
        .map(Path::toAbsolutePath)
        .map(p -> file ? p.getParent() : p)
        .ifPresent(settings::setFolder);
    return answer;
  }

  @Override
  public void beginIn(Path folder) {
    asks.beginIn(folder);
  }

  @Override
  public Optional<Path> plan() {
    return asked(asks::plan, true);
  }

  @Override
  public Optional<Path> planToSave(String name) {
    return asked(() -> asks.planToSave(name), true);
  }

  @Override
  public Optional<Path> graphic() {
    return asked(asks::graphic, true);
  }

  @Override
  public Optional<Path> picture() {
    return asked(asks::picture, true);
  }

  @Override
  public Optional<Path> photo() {
    return asked(asks::photo, true);
  }

  @Override
  public Optional<Path> pdfToSave(String name) {
    return asked(() -> asks.pdfToSave(name), true);
  }

  @Override
  public Optional<Path> proof() {
    return asked(asks::proof, true);
  }

  @Override
  public Optional<Path> folder(String what) {
    return asked(() -> asks.folder(what), false);
  }
}
