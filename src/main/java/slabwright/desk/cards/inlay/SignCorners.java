package slabwright.desk.cards.inlay;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Rectangle2D;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import slabwright.desk.shell.Controls;
import slabwright.pdfin.picture.Photo;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;
import slabwright.units.Result;
import slabwright.words.Words;

/**
 * Takes the four corners of a flat sign in a slanted photo. A card is too narrow to meet a corner
 * with one click, so the first click brings its place nearer and the second one is the corner.
 */
final class SignCorners extends VBox {
  private static final double WIDE = 300;
  private static final double HIGH = 400;
  private static final double NEARER = 6;
  private static final double DOT = 4;
  private static final int CORNERS = 4;
  private static final List<Vec> SQUARE =
      List.of(Vec.ZERO, new Vec(1, 0), new Vec(1, 1), new Vec(0, 1));

  private final Words words;
  private final Consumer<List<Vec>> taken;
  private final ImageView view = new ImageView();
  private final Pane pane = new Pane(view);
  private final Label prompt = Controls.sentence("", "card-hint");
  private final List<Vec> corners = new ArrayList<>();
  private double scale = 1;
  private boolean near;

  /**
   * A picker, not seen until it is opened.
   *
   * @param taken gets four corners in pixels of the upright photo
   */
  SignCorners(Words words, Consumer<List<Vec>> taken) {
    super(4);
    this.words = words;
    this.taken = taken;
    prompt.setId("sign-prompt");
    pane.setId("sign-photo");
    pane.setAccessibleText(words.say("desk.cards.inlay.trace.picture"));
    view.setPreserveRatio(true);
    view.setSmooth(true);
    view.setFitWidth(WIDE);
    view.setFitHeight(HIGH);
    view.setOnMouseClicked(this::click);
    getChildren().addAll(prompt, pane);
    close();
  }

  void close() {
    corners.clear();
    view.setImage(null);
    Controls.show(this, false);
  }

  boolean isOpen() {
    return isVisible();
  }

  /** Shows a photo and asks for its first corner; says why when it can't be shown. */
  void open(Path file) {
    corners.clear();
    Controls.show(this, true);
    Result<Photo> read = Photo.read(file);
    if (read instanceof Result.Refused<Photo> refused) {
      view.setImage(null);
      prompt.setText(words.say(refused.message()));
      return;
    }
    Photo photo = read.orThrow();
    scale = photo.scale();
    view.setImage(new Image(new ByteArrayInputStream(photo.picture().jpeg())));
    whole();
  }

  private void whole() {
    near = false;
    view.setViewport(null);
    pane.getChildren().setAll(view);
    for (Vec c : corners) {
      Vec at = c.times(scale / pixelsPerPoint());
      Circle dot = new Circle(at.x(), at.y(), DOT);
      dot.getStyleClass().add("sign-corner");
      dot.setMouseTransparent(true);
      pane.getChildren().add(dot);
    }
    prompt.setText(words.say("desk.cards.inlay.trace.corner", corners.size()));
  }

  /** The part of the picture that is seen, in its pixels. */
  private Rectangle2D seen() {
    Image image = view.getImage();
    return Optional.ofNullable(view.getViewport())
        .orElseGet(() -> new Rectangle2D(0, 0, image.getWidth(), image.getHeight()));
  }

  private double pixelsPerPoint() {
    return Math.max(seen().getWidth() / WIDE, seen().getHeight() / HIGH);
  }

  private void click(MouseEvent e) {
    double k = pixelsPerPoint();
    Vec at = new Vec(seen().getMinX() + e.getX() * k, seen().getMinY() + e.getY() * k);
    if (near) {
      take(at);
      return;
    }
    near = true;
    double w = seen().getWidth() / NEARER;
    double h = seen().getHeight() / NEARER;
    double x = Math.max(0, Math.min(seen().getWidth() - w, at.x() - w / 2));
    double y = Math.max(0, Math.min(seen().getHeight() - h, at.y() - h / 2));
    view.setViewport(new Rectangle2D(x, y, w, h));
    pane.getChildren().setAll(view);
    prompt.setText(words.say("desk.cards.inlay.trace.corner-nearer"));
  }

  private void take(Vec pixel) {
    corners.add(rounded(pixel.times(1 / scale)));
    if (corners.size() < CORNERS) {
      whole();
    } else if (Homography.of(SQUARE, corners).isEmpty()) {
      corners.clear();
      whole();
      prompt.setText(words.say("desk.cards.inlay.trace.corners-crossed"));
    } else {
      List<Vec> all = List.copyOf(corners);
      close();
      taken.accept(all);
    }
  }

  /** A tenth of a pixel is finer than any hand, and reads well in a plan's file. */
  private static Vec rounded(Vec p) {
    return new Vec(Math.rint(p.x() * 10) / 10, Math.rint(p.y() * 10) / 10);
  }
}
