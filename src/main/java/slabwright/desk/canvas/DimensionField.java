package slabwright.desk.canvas;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.edit.Walls;
import slabwright.desk.model.plan.TapedRooms;
import slabwright.desk.shell.Controls;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;

/** A field over a dimension: the wall's true length is typed, the end nearest the click moves. */
public final class DimensionField extends VBox {
  private final DeskContext bench;
  private final TapedRooms rooms;
  private final TextField field = new TextField();
  private final Label note = Controls.sentence("", "field-note");
  private int wall;
  private boolean far;

  public DimensionField(DeskContext bench, TapedRooms rooms) {
    this.bench = bench;
    this.rooms = rooms;
    getStyleClass().add("dimension-field");
    setManaged(false);
    setVisible(false);
    field.setId("dimension-field");
    field.setAccessibleText(bench.words().say("desk.canvas.dimension.true-length"));
    getChildren().addAll(field, note);
    field.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                close();
              }
            });
  }

  void open(LiveDimensions.Target target, Vec click) {
    FloorArea area = bench.focus().area().orElseThrow();
    wall = target.wall();
    far = Walls.end(area, wall).distanceTo(click) < Walls.start(area, wall).distanceTo(click);
    field.setText(target.words());
    note.setText(
        bench
            .words()
            .say(
                rooms.of(area).isPresent()
                    ? Message.of("desk.canvas.dimension.one-more-reading")
                    : Message.of("desk.canvas.dimension.nearer-end-moves")));
    setVisible(true);
    resizeRelocate(target.box().middle().x() - 110, target.box().middle().y() - 22, 220, 96);
    setMinHeight(Region.USE_PREF_SIZE);
    field.requestFocus();
    field.selectAll();
  }

  void close() {
    setVisible(false);
  }

  private void key(KeyEvent e) {
    if (e.getCode() == KeyCode.ESCAPE) {
      close();
      e.consume();
    } else if (e.getCode() == KeyCode.ENTER) {
      take(e.isShiftDown());
      e.consume();
    }
  }

  private void take(boolean whole) {
    Result<Length> read = Length.parse(field.getText());
    if (read instanceof Result.Refused<Length> refused) {
      note.setText(bench.words().say(refused.message()));
      return;
    }
    FloorArea area = bench.focus().areaOf(bench.desk().site()).orElseThrow();
    int next = (wall + 1) % area.outline().size();
    if (rooms.typed(area, wall, next, read.orThrow())) {
      close();
      return;
    }
    bench.desk().push(Walls.lengthened(area, wall, read.orThrow().mm(), far, whole));
    close();
  }
}
