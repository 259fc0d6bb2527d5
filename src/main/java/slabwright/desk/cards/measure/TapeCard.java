package slabwright.desk.cards.measure;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.control.TextField;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PlaceNavigator;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.model.plan.TapedRooms;
import slabwright.desk.shell.Controls;
import slabwright.figures.TapeInks;
import slabwright.shape.Bounds;
import slabwright.site.FloorArea;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.CornerName;
import slabwright.tape.TapeAdvice;
import slabwright.tape.TapedOutline;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.Result;

/** How well the tape closes, what to measure again, and a line to type a diagonal. */
public final class TapeCard extends Card {
  private static final Pattern ONE_LETTER = Pattern.compile("([A-Za-z])\\s*([A-Za-z])\\s+(.+)");

  private static final Pattern LETTERS =
      Pattern.compile("([A-Za-z]{1,2})\\s+([A-Za-z]{1,2})\\s+(.+)");

  private final DeskContext bench;
  private final TapedRooms rooms;
  private final PlaceNavigator places;
  private final FieldRows rows;
  private final FieldRows how;
  private final TypedLength lengths;
  private final TextField diagonal = new TextField();
  private final javafx.scene.control.Label wrong = Controls.sentence("", "field-wrong");
  private List<Object> shown = List.of();

  public TapeCard(DeskContext bench, TapedRooms rooms, PlaceNavigator places) {
    super(bench, "tape", bench.words().say("desk.cards.measure.tape.tape"));
    this.bench = bench;
    this.rooms = rooms;
    this.places = places;
    rows = new FieldRows(bench);
    lengths = rows.typed(LengthUse.WALL);
    diagonal.setId("diagonal");
    diagonal.setPromptText(words().say("desk.cards.measure.tape.diagonal-such-as-a-c"));
    diagonal.setAccessibleText(words().say("desk.cards.measure.tape.a-diagonal-two-corners-and"));
    diagonal.setOnAction(e -> type());
    Controls.show(wrong, false);
    how = new FieldRows(bench);
    Controls.show(how, false);
    var known =
        Controls.button(
            words().say("desk.cards.measure.tape.how-well-known"),
            "link",
            () -> Controls.show(how, !how.isVisible()));
    known.setId("how-well-known");
    body().getChildren().addAll(rows, diagonal, wrong, known, how);
  }

  private Optional<AdjustedRoom> room() {
    return bench.focus().area().flatMap(rooms::of);
  }

  private void fill(AdjustedRoom r, FloorArea area) {
    rows.clear();
    double gap = r.closing().gap().length();
    rows.figure(
        words().say("desk.cards.measure.tape.closing-gap"),
        () -> LengthFormat.show(gap, rows.units()));
    for (TapeAdvice a : r.advice()) {
      rows.getChildren().add(row(a, area).row(words()));
    }
    if (r.advice().isEmpty()) {
      rows.getChildren()
          .add(
              FindingRow.fine(words().say("desk.cards.measure.tape.the-readings-agree"))
                  .row(words()));
    }
    how.clear();
    if (gap > 0.5) {
      how.figure(
          words().say("desk.cards.measure.tape.one-part-in"),
          () -> QuantityFormat.number(Math.floor(r.closing().perimeter() / gap), 0));
    }
    how.figure(
        words().say("desk.cards.measure.tape.readings-to-spare"),
        () -> String.valueOf(r.redundancy()));
    String about = new TapeInks(r, TapedOutline.placing(area)).about(bench.words());
    how.getChildren().add(Controls.sentence(about, "card-hint"));
  }

  private FindingRow row(TapeAdvice a, FloorArea area) {
    Optional<Runnable> show =
        a.corners().isEmpty()
            ? Optional.empty()
            : Optional.of(
                () ->
                    places.show(
                        Bounds.of(
                            a.corners().stream()
                                .filter(c -> c < area.outline().size())
                                .map(c -> area.outline().get(c).from().vec())
                                .toList())));
    return new FindingRow(FindingRow.Sign.LOOK, bench.words().say(a.sentence()), show);
  }

  private void type() {
    String why = taken(diagonal.getText().strip());
    wrong.setText(why);
    Controls.show(wrong, !why.isEmpty());
    if (why.isEmpty()) {
      diagonal.clear();
    }
  }

  /** Takes a line; returns why not, or nothing. */
  private String taken(String line) {
    int n = bench.focus().area().map(a -> a.outline().size()).orElse(0);
    Matcher m = (n <= 26 ? ONE_LETTER : LETTERS).matcher(line);
    if (!m.matches()) {
      return words().say("desk.cards.measure.tape.write-two-corners-and-a");
    }
    int from = CornerName.index(m.group(1)).orElse(n);
    int to = CornerName.index(m.group(2)).orElse(n);
    if (from >= n || to >= n || from == to) {
      return words()
          .say(
              "desk.cards.measure.tape.the-corners-of-this-room",
              CornerName.of(Math.max(0, n - 1)));
    }
    Result<Length> length = lengths.read(m.group(3));
    if (length instanceof Result.Refused<Length> bad) {
      return words().say(bad.message());
    }
    FloorArea area = bench.focus().areaOf(bench.desk().site()).orElseThrow();
    rooms.typed(area, from, to, length.orThrow());
    return "";
  }

  @Override
  protected void refresh() {
    Optional<AdjustedRoom> r = room();
    List<Object> now = List.of(r, rows.units());
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
