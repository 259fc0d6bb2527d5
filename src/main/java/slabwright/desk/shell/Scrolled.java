package slabwright.desk.shell;

import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** As large as what it holds, and scrolls that where there is less room. */
public class Scrolled extends ScrollPane {
  private final Region held;

  public Scrolled(Region held) {
    this.held = held;
    setContent(held);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    getStyleClass().add("scrolled");
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    setMinHeight(0);
  }

  @Override
  protected double computePrefWidth(double height) {
    return snappedLeftInset() + held.prefWidth(-1) + snappedRightInset();
  }

  @Override
  protected double computePrefHeight(double width) {
    double inner =
        width < 0 ? held.prefWidth(-1) : width - snappedLeftInset() - snappedRightInset();
    return snappedTopInset() + held.prefHeight(inner) + snappedBottomInset();
  }

  /** Keys stay where they are when an empty place is pressed. */
  @Override
  public void requestFocus() {
    // Nothing of its own takes keys.
  }
}
