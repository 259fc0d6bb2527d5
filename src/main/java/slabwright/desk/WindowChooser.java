package slabwright.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;

/** Asks with the system's own dialogs. */
final class WindowChooser implements Chooser {
  private static final ExtensionFilter PLANS = new ExtensionFilter("Site plans", "*.site.json");

  private final Window window;

  WindowChooser(Window window) {
    this.window = window;
  }

  private static FileChooser chooser(String title, ExtensionFilter filter) {
    FileChooser c = new FileChooser();
    c.setTitle(title);
    c.getExtensionFilters().setAll(filter, new ExtensionFilter("All files", "*.*"));
    return c;
  }

  private Optional<Path> open(String title, ExtensionFilter filter) {
    return Optional.ofNullable(chooser(title, filter).showOpenDialog(window)).map(File::toPath);
  }

  @Override
  public Optional<Path> plan() {
    return open("Open a plan", PLANS);
  }

  @Override
  public Optional<Path> planToSave(String name) {
    FileChooser c = chooser("Save the plan", PLANS);
    c.setInitialFileName(name + ".site.json");
    return Optional.ofNullable(c.showSaveDialog(window)).map(File::toPath);
  }

  @Override
  public Optional<Path> graphic() {
    return open("Choose a graphic", new ExtensionFilter("SVG graphics", "*.svg"));
  }

  @Override
  public Optional<Path> picture() {
    return open(
        "Choose a picture to trace over",
        new ExtensionFilter("Pictures and plans", "*.png", "*.jpg", "*.jpeg", "*.pdf"));
  }

  @Override
  public Optional<Path> proof() {
    return open(
        "Choose the drawing that came back", new ExtensionFilter("Drawings", "*.svg", "*.pdf"));
  }

  @Override
  public Optional<Path> folder(String what) {
    DirectoryChooser c = new DirectoryChooser();
    c.setTitle(what);
    return Optional.ofNullable(c.showDialog(window)).map(File::toPath);
  }
}
