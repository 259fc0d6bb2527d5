package slabwright.desk.shell;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import slabwright.desk.model.DeskContext;
import slabwright.site.edit.SiteEdit;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** The site's name, to be typed over, whether it is saved, and the units it is shown in. */
final class SiteTitle extends VBox {
  private final DeskContext bench;
  private final TextField name = new TextField();
  private final Label saved = Controls.label("", "bar-soft");
  private final Button units;

  SiteTitle(DeskContext bench) {
    this.bench = bench;
    getStyleClass().add("site-title");
    setAlignment(Pos.CENTER_LEFT);
    name.getStyleClass().add("site-name");
    name.setId("site-name");
    name.setAccessibleText(bench.words().say("desk.shell.site-title.name-of-the-site"));
    name.setOnAction(e -> rename());
    name.focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                rename();
              }
            });
    name.addEventFilter(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            name.setText(bench.desk().site().name());
          }
        });
    units = Controls.button("", "bar-link", this::switchUnits);
    units.setId("units");
    HBox line = new HBox(saved, Controls.label("·", "bar-soft"), units);
    line.setAlignment(Pos.CENTER_LEFT);
    line.setSpacing(5);
    line.setPadding(new javafx.geometry.Insets(0, 0, 0, 6));
    getChildren().addAll(name, line);
  }

  void refresh() {
    if (!name.isFocused()) {
      Controls.type(name, bench.desk().site().name());
    }
    saved.setText(state());
    boolean feet = bench.desk().site().units() == UnitSystem.FEET_INCHES;
    Words words = bench.words();
    units.setText(
        feet
            ? words.say("desk.shell.site-title.feet-and-inches")
            : words.say("desk.shell.site-title.metres"));
    String other =
        feet
            ? words.say("desk.shell.site-title.show-metres")
            : words.say("desk.shell.site-title.show-feet-and-inches");
    Controls.named(units, other, "Ctrl+U");
  }

  private String state() {
    if (bench.desk().file().isEmpty()) {
      return bench.words().say("desk.shell.site-title.no-file-yet");
    }
    return bench.desk().history().isSaved()
        ? bench.words().say("desk.shell.site-title.saved")
        : bench.words().say("desk.shell.site-title.in-the-journal");
  }

  private void rename() {
    String typed = name.getText().strip();
    if (!typed.isEmpty() && !typed.equals(bench.desk().site().name())) {
      bench.desk().push(new SiteEdit.Rename(typed));
    }
    refresh();
  }

  private void switchUnits() {
    UnitSystem now = bench.desk().site().units();
    bench
        .desk()
        .push(
            new SiteEdit.SetUnits(
                now == UnitSystem.METRIC ? UnitSystem.FEET_INCHES : UnitSystem.METRIC));
  }
}
