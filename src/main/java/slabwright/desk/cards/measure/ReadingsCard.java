package slabwright.desk.cards.measure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.model.plan.TapedRooms;
import slabwright.desk.shell.Controls;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.ClosingRemedy;
import slabwright.tape.Reading;
import slabwright.tape.ReadingReport;
import slabwright.tape.Readings;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/**
 * Every reading of a taped room with how it fits: each can be read otherwise, struck out or marked
 * doubtful. First what would close the room, and what was drawn otherwise than taped.
 */
public final class ReadingsCard extends Card {
  /** A reading that fits within this is said to fit: what a tape shows, mm and degrees. */
  private static final double FITS = 0.8;

  private static final double FITS_TURN = 0.05;

  private final DeskContext bench;
  private final TapedRooms rooms;
  private final FieldRows rows;
  private final TypedLength lengths;
  private final VBox first = new VBox(6);
  private List<Object> shown = List.of();

  public ReadingsCard(DeskContext bench, TapedRooms rooms) {
    super(bench, "readings", bench.words().say("desk.cards.measure.readings.title"));
    this.bench = bench;
    this.rooms = rooms;
    rows = new FieldRows(bench);
    lengths = rows.typed(LengthUse.WALL);
    body().getChildren().addAll(first, rows);
  }

  private Optional<AdjustedRoom> room() {
    return bench.focus().area().flatMap(rooms::readings);
  }

  private FloorArea area() {
    return bench.focus().areaOf(bench.desk().site()).orElseThrow();
  }

  private void fill(AdjustedRoom r, FloorArea area) {
    first.getChildren().clear();
    rows.clear();
    drawnOtherwise(r, area);
    for (ClosingRemedy remedy : ClosingRemedy.of(r, rows.units())) {
      first.getChildren().add(remedy(remedy));
    }
    r.readings().forEach(report -> reading(r, report));
  }

  /** What the drawing contradicts; nothing of the tape is dropped for it. */
  private void drawnOtherwise(AdjustedRoom r, FloorArea area) {
    if (rooms.of(area).isPresent()) {
      return;
    }
    String said =
        area.outline().size() == r.corners().size()
            ? bench
                .words()
                .say("desk.cards.measure.readings.drawn-otherwise", contradicted(r, area))
            : bench.words().say("desk.cards.measure.readings.other-corners");
    Button back =
        Controls.button(
            bench.words().say("desk.cards.measure.readings.back-to-tape"),
            "soft-button",
            () -> rooms.backToTape(area()));
    back.setId("back-to-tape");
    first.getChildren().addAll(FindingRow.look(said).row(words()), back);
  }

  private String contradicted(AdjustedRoom r, FloorArea area) {
    List<Vec> drawn = area.outline().stream().map(p -> p.from().vec()).toList();
    return Readings.contradicted(r, drawn).stream()
        .map(c -> contradicted(r, c))
        .collect(Collectors.joining("; "));
  }

  private String contradicted(AdjustedRoom r, Readings.Contradicted c) {
    Reading reading = r.room().readings().get(c.index());
    String drawn =
        reading instanceof Reading.Turn
            ? degrees(c.drawn())
            : LengthFormat.show(c.drawn(), units());
    return bench
        .words()
        .say(
            "desk.cards.measure.readings.contradicted",
            reading.name(r.room().corners()),
            typed(reading),
            drawn);
  }

  private UnitSystem units() {
    return rows.units();
  }

  private VBox remedy(ClosingRemedy remedy) {
    Button take =
        Controls.button(
            bench.words().say("desk.cards.measure.readings.take-it"),
            "soft-button",
            () -> rooms.replace(area(), remedy.reading(), remedy.instead()));
    take.setId("take-" + remedy.reading());
    String said = bench.words().say("desk.cards.measure.readings.would-close", remedy.sentence());
    return new VBox(4, FindingRow.look(said).row(words()), take);
  }

  private void reading(AdjustedRoom r, ReadingReport report) {
    int index = report.index();
    Reading reading = r.room().readings().get(index);
    rows.text(bench.words().say(report.name()), () -> typed(reading), text -> take(index, text))
        .id("reading-" + index);
    Button drop =
        Controls.button(
            bench.words().say("desk.cards.measure.readings.drop"),
            "link-button",
            () -> rooms.drop(area(), index));
    drop.setId("drop-" + index);
    ToggleButton doubt =
        new ToggleButton(bench.words().say("desk.cards.measure.readings.doubtful"));
    doubt.setId("doubt-" + index);
    doubt.setSelected(Readings.isDoubtful(r.room(), reading));
    doubt.setOnAction(
        e -> rooms.replace(area(), index, Readings.doubted(r.room(), reading, doubt.isSelected())));
    HBox line =
        new HBox(8, Controls.label(misfit(report), "row-name"), Controls.spring(), doubt, drop);
    line.setAlignment(Pos.CENTER_LEFT);
    rows.getChildren().add(line);
  }

  private String misfit(ReadingReport report) {
    if (report.use() == ReadingReport.Use.LEFT_OUT) {
      return bench.words().say("desk.cards.measure.readings.left-out");
    }
    double by = report.residual();
    if (Math.abs(by) < (report.turn() ? FITS_TURN : FITS)) {
      return bench.words().say("desk.cards.measure.readings.fits");
    }
    String size =
        report.turn()
            ? QuantityFormat.number(Math.abs(by), 1) + "°"
            : LengthFormat.show(Math.abs(by), units());
    return bench
        .words()
        .say(
            by > 0
                ? Message.of("desk.cards.measure.readings.read-short", size)
                : Message.of("desk.cards.measure.readings.read-long", size));
  }

  private String typed(Reading reading) {
    return reading instanceof Reading.Turn t
        ? degrees(t.degrees())
        : ((Reading.Taped) reading).length().toString();
  }

  private String degrees(double left) {
    String size = QuantityFormat.number(Math.abs(left), 1);
    return bench
        .words()
        .say(
            left < 0
                ? Message.of("desk.cards.measure.readings.right", size)
                : Message.of("desk.cards.measure.readings.left", size));
  }

  private Result<?> take(int index, String text) {
    Reading old = room().orElseThrow().room().readings().get(index);
    if (old instanceof Reading.Turn t) {
      return TypedTurn.read(text).map(d -> rows.taken(d, v -> turned(index, t, v)));
    }
    return lengths
        .read(text)
        .map(
            l ->
                rows.taken(
                    l,
                    v ->
                        rooms.replace(area(), index, Readings.withLength((Reading.Taped) old, v))));
  }

  private void turned(int index, Reading.Turn t, double degrees) {
    rooms.replace(area(), index, new Reading.Turn(t.corner(), degrees, t.trust(), t.error()));
  }

  @Override
  protected void refresh() {
    Optional<AdjustedRoom> r = room();
    List<Object> now =
        List.of(r, units(), bench.focus().area().map(FloorArea::outline).map(Object.class::cast));
    if (!now.equals(shown)) {
      shown = now;
      r.ifPresent(x -> fill(x, bench.focus().area().orElseThrow()));
    }
  }

  @Override
  public boolean isWanted() {
    return room().isPresent();
  }
}
