package slabwright.desk.canvas;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.edit.Walls;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.model.plan.TapedRooms;
import slabwright.desk.shell.Controls;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.Reading;
import slabwright.tape.Readings;
import slabwright.tape.TapeRoom;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;

/** A field over a dimension: the wall's true length is typed, the end nearest the click moves. */
public final class DimensionField extends VBox {
  private final DeskContext bench;
  private final TapedRooms rooms;
  private final Runnable home;
  private final TypedLength lengths;
  private final TextField field = new TextField();
  private final Label note = Controls.sentence("", "field-note");
  private final HBox choice = new HBox(8);
  private String asked = "";
  private int wall;
  private boolean far;

  /**
   * A field that shows once a dimension is clicked.
   *
   * @param home gives the keys back to the slab
   */
  public DimensionField(DeskContext bench, TapedRooms rooms, Runnable home) {
    this.bench = bench;
    this.home = home;
    lengths = new TypedLength(LengthUse.WALL, () -> bench.desk().site().units());
    this.rooms = rooms;
    getStyleClass().add("dimension-field");
    setManaged(false);
    setVisible(false);
    field.setId("dimension-field");
    field.setAccessibleText(bench.words().say("desk.canvas.dimension.true-length"));
    Controls.show(choice, false);
    getChildren().addAll(field, note, choice);
    field.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is && !choice.isHover()) {
                close();
              }
            });
  }

  void open(LiveDimensions.Target target, Vec click) {
    FloorArea area = bench.focus().area().orElseThrow();
    wall = target.wall();
    far = Walls.end(area, wall).distanceTo(click) < Walls.start(area, wall).distanceTo(click);
    asked = "";
    Controls.show(choice, false);
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

  /** What was typed is taken or given up. */
  private void done() {
    close();
    home.run();
  }

  private void key(KeyEvent e) {
    if (e.getCode() == KeyCode.ESCAPE) {
      done();
      e.consume();
    } else if (e.getCode() == KeyCode.ENTER) {
      take(e.isShiftDown());
      e.consume();
    }
  }

  private void take(boolean shift) {
    Result<Length> read = lengths.read(field.getText());
    if (read instanceof Result.Refused<Length> refused) {
      note.setText(bench.words().say(refused.message()));
      field.selectAll();
      return;
    }
    FloorArea area = bench.focus().areaOf(bench.desk().site()).orElseThrow();
    Optional<TapeRoom> taped = rooms.of(area).map(AdjustedRoom::room);
    Optional<Reading.Taped> before = taped.flatMap(room -> reading(room, wall));
    if (taped.isEmpty()) {
      bench.desk().push(Walls.lengthened(area, wall, read.orThrow().mm(), far, shift));
      done();
    } else if (before.isEmpty()) {
      second(read.orThrow());
    } else if (field.getText().equals(asked)) {
      if (shift) {
        second(read.orThrow());
      } else {
        replace(read.orThrow());
      }
    } else {
      ask(before.get(), read.orThrow());
    }
  }

  private static Optional<Reading.Taped> reading(TapeRoom room, int wall) {
    return Readings.ofWall(room, wall).map(i -> (Reading.Taped) room.readings().get(i));
  }

  /** Asks once whether the tape was misread there or is read a second time. */
  private void ask(Reading.Taped before, Length now) {
    asked = field.getText();
    note.setText(
        bench.words().say("desk.canvas.dimension.replace-or-second", before.length().toString()));
    Button replace =
        Controls.button(
            bench.words().say("desk.canvas.dimension.replace"), "soft-button", () -> replace(now));
    replace.setId("dimension-replace");
    Button second =
        Controls.button(
            bench.words().say("desk.canvas.dimension.second"), "soft-button", () -> second(now));
    second.setId("dimension-second");
    choice.getChildren().setAll(replace, second);
    Controls.show(choice, true);
    autosize();
  }

  private void replace(Length now) {
    FloorArea area = bench.focus().areaOf(bench.desk().site()).orElseThrow();
    TapeRoom room = rooms.of(area).orElseThrow().room();
    int index = Readings.ofWall(room, wall).orElseThrow();
    rooms.replace(area, index, Readings.withLength(reading(room, wall).orElseThrow(), now));
    done();
  }

  private void second(Length now) {
    FloorArea area = bench.focus().areaOf(bench.desk().site()).orElseThrow();
    rooms.typed(area, wall, (wall + 1) % area.outline().size(), now);
    done();
  }
}
