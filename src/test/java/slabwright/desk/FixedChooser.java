package slabwright.desk;

import java.nio.file.Path;
import java.util.Optional;

/** Answers every question for a file with one in a folder. */
record FixedChooser(Path data, Path chosen) implements Chooser {
  FixedChooser(Path data) {
    this(data, data.resolve("graphic.svg"));
  }

  @Override
  public void beginIn(Path in) {
    // Its answers are the same wherever one begins.
  }

  @Override
  public Optional<Path> plan() {
    return Optional.of(data.resolve("shed.site.json"));
  }

  @Override
  public Optional<Path> planToSave(String name) {
    return Optional.of(data.resolve("saved").resolve(name + ".site.json"));
  }

  @Override
  public Optional<Path> graphic() {
    return Optional.of(chosen);
  }

  @Override
  public Optional<Path> picture() {
    return Optional.of(data.resolve("picture.png"));
  }

  @Override
  public Optional<Path> photo() {
    return Optional.of(data.resolve("photo.jpg"));
  }

  @Override
  public Optional<Path> pdfToSave(String name) {
    return Optional.of(data.resolve(name + ".pdf"));
  }

  @Override
  public Optional<Path> proof() {
    return Optional.of(data.resolve("returned.svg"));
  }

  @Override
  public Optional<Path> folder(String what) {
    return Optional.of(data.resolve("out"));
  }
}
