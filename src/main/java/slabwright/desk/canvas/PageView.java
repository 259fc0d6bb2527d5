package slabwright.desk.canvas;

import java.util.Optional;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import slabwright.desk.model.compute.SheetPages;
import slabwright.drawing.Drawing;
import slabwright.shape.Bounds;
import slabwright.sheets.page.PrintedPage;
import slabwright.words.Words;

/**
 * The page looked at, as it will be printed, as large as the view allows; the wheel looks closer.
 */
public final class PageView extends Region {
  private static final double RIM = 34;

  private final SheetPages pages;
  private final Words words;
  private final Canvas canvas = new Canvas();
  private Optional<PrintedPage> shown = Optional.empty();
  private double closer = 1;
  private double shiftX;
  private double shiftY;
  private double lastX;
  private double lastY;

  public PageView(SheetPages pages, Words words) {
    this.words = words;
    this.pages = pages;
    setId("page");
    getStyleClass().add("page-view");
    getChildren().add(canvas);
    setFocusTraversable(true);
    setOnScroll(
        e -> {
          double k = Math.max(1, Math.min(12, closer * Math.pow(1.0018, e.getDeltaY()))) / closer;
          shiftX = (shiftX - e.getX() + getWidth() / 2) * k + e.getX() - getWidth() / 2;
          shiftY = (shiftY - e.getY() + getHeight() / 2) * k + e.getY() - getHeight() / 2;
          closer *= k;
          paint();
        });
    setOnMousePressed(
        e -> {
          lastX = e.getX();
          lastY = e.getY();
          requestFocus();
        });
    setOnMouseDragged(
        e -> {
          shiftX += e.getX() - lastX;
          shiftY += e.getY() - lastY;
          lastX = e.getX();
          lastY = e.getY();
          paint();
        });
  }

  /** Shows the page that is looked at now. */
  public void refresh() {
    Optional<PrintedPage> now = pages.page();
    if (!now.equals(shown)) {
      shown = now;
      closer = 1;
      shiftX = 0;
      shiftY = 0;
      now.ifPresent(p -> setAccessibleText(words.say("desk.canvas.sheet", p.title())));
    }
    paint();
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    paint();
  }

  private void paint() {
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, getWidth(), getHeight());
    if (shown.isEmpty() || getWidth() < 50) {
      return;
    }
    Drawing d = shown.get().drawing();
    Bounds b = d.bounds();
    double k =
        closer * Math.min((getWidth() - 2 * RIM) / b.width(), (getHeight() - 2 * RIM) / b.height());
    double x = (getWidth() - b.width() * k) / 2 + shiftX;
    double y = (getHeight() - b.height() * k) / 2 + shiftY;
    g.save();
    g.translate(x, y);
    g.setFill(Color.rgb(0, 0, 0, 0.18));
    g.fillRect(4, 5, b.width() * k, b.height() * k);
    g.setFill(Color.WHITE);
    g.fillRect(0, 0, b.width() * k, b.height() * k);
    d.paintOn(new FxPainter(g, k, Tone.LIGHT), b);
    g.restore();
  }
}
