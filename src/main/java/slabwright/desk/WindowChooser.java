package slabwright.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;
import slabwright.words.Words;

/** Asks with the system's own dialogs. */
final class WindowChooser implements Chooser {
  private final Window window;
  private final Words words;
  private Optional<File> folder = Optional.empty();

  WindowChooser(Window window, Words words) {
    this.words = words;
    this.window = window;
  }

  @Override
  public void beginIn(Path in) {
    folder = Optional.of(in.toFile());
  }

  private ExtensionFilter plans() {
    return new ExtensionFilter(words.say("desk.app.chooser.site-plans"), "*.site.json");
  }

  private FileChooser chooser(String title, ExtensionFilter filter) {
    FileChooser c = new FileChooser();
    c.setTitle(title);
    folder.ifPresent(c::setInitialDirectory);
    c.getExtensionFilters()
        .setAll(filter, new ExtensionFilter(words.say("desk.app.chooser.all-files"), "*.*"));
    return c;
  }

  private Optional<Path> open(String title, ExtensionFilter filter) {
    return Optional.ofNullable(chooser(title, filter).showOpenDialog(window)).map(File::toPath);
  }

  @Override
  public Optional<Path> plan() {
    return open(words.say("desk.app.chooser.open-a-plan"), plans());
  }

  @Override
  public Optional<Path> planToSave(String name) {
    FileChooser c = chooser(words.say("desk.app.chooser.save-the-plan"), plans());
    c.setInitialFileName(name + ".site.json");
    return Optional.ofNullable(c.showSaveDialog(window)).map(File::toPath);
  }

  @Override
  public Optional<Path> graphic() {
    return open(
        words.say("desk.app.chooser.choose-a-graphic"),
        new ExtensionFilter(
            words.say("desk.app.chooser.graphics"),
            "*.svg",
            "*.svgz",
            "*.pdf",
            "*.png",
            "*.jpg",
            "*.jpeg",
            "*.gif",
            "*.bmp",
            "*.tif",
            "*.tiff"));
  }

  @Override
  public Optional<Path> picture() {
    return open(
        words.say("desk.app.chooser.choose-a-picture"),
        new ExtensionFilter(
            words.say("desk.app.chooser.pictures-and-plans"), "*.png", "*.jpg", "*.jpeg", "*.pdf"));
  }

  @Override
  public Optional<Path> photo() {
    return open(
        words.say("desk.app.chooser.choose-a-photo"),
        new ExtensionFilter(words.say("desk.app.chooser.photos"), "*.jpg", "*.jpeg", "*.png"));
  }

  @Override
  public Optional<Path> pdfToSave(String name) {
    FileChooser c =
        chooser(words.say("desk.app.chooser.save-the-pdf"), new ExtensionFilter("PDF", "*.pdf"));
    c.setInitialFileName(name + ".pdf");
    return Optional.ofNullable(c.showSaveDialog(window)).map(File::toPath);
  }

  @Override
  public Optional<Path> proof() {
    return open(
        words.say("desk.app.chooser.choose-the-returned-drawing"),
        new ExtensionFilter(words.say("desk.app.chooser.drawings"), "*.svg", "*.pdf"));
  }

  @Override
  public Optional<Path> folder(String what) {
    DirectoryChooser c = new DirectoryChooser();
    c.setTitle(what);
    folder.ifPresent(c::setInitialDirectory);
    return Optional.ofNullable(c.showDialog(window)).map(File::toPath);
  }
}
