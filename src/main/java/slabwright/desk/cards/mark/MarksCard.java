package slabwright.desk.cards.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import slabwright.desk.cards.Card;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.shell.Controls;
import slabwright.figures.MarkStyles;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.edit.MarkEdit;

/**
 * All marks, the topmost first. A click picks one, with Shift or Ctrl one more; dragged to another
 * row it is laid higher or lower.
 */
public final class MarksCard extends Card {
  private static final int MOST = 40;

  private final DeskContext bench;
  private final VBox list = new VBox();
  private final MarkReordering order;
  private List<Mark> shown = List.of();
  private Set<PlanItem> picked = Set.of();

  public MarksCard(DeskContext bench) {
    super(
        bench,
        "marks-topmost-first",
        bench.words().say("desk.cards.mark.marks.marks-topmost-first"));
    this.bench = bench;
    list.setSpacing(1);
    order = new MarkReordering(list, this::moved);
    body().getChildren().add(list);
  }

  private void fill(FloorArea area) {
    list.getChildren().clear();
    List<Mark> marks = new ArrayList<>(area.marks());
    java.util.Collections.reverse(marks);
    marks.stream().limit(MOST).forEach(m -> list.getChildren().add(row(m)));
    if (marks.size() > MOST) {
      list.getChildren()
          .add(
              Controls.label(
                  words().say("desk.cards.mark.marks.and-more-under-these", marks.size() - MOST),
                  "card-hint"));
    }
  }

  private ToggleButton row(Mark m) {
    Region swatch = new Region();
    swatch.getStyleClass().add("swatch");
    var look = MarkStyles.of(m.kind().type());
    swatch.setStyle(
        "-fx-background-color: "
            + look.field().css()
            + "; -fx-border-color: "
            + look.colour().css());
    String kind = words().say(m.kind().type().label());
    String name = m.name().isBlank() ? kind : m.name();
    HBox line = new HBox(swatch, Controls.label(name), Controls.spring());
    if (!m.name().isBlank()) {
      line.getChildren().add(Controls.label(kind, "card-hint"));
    }
    line.setSpacing(9);
    line.setAlignment(Pos.CENTER_LEFT);
    ToggleButton b = new ToggleButton();
    b.setGraphic(line);
    b.getStyleClass().setAll("mark-row");
    b.setMaxWidth(Double.MAX_VALUE);
    b.setSelected(bench.focus().selected().contains(new PlanItem.OfMark(m.id())));
    b.setId("mark-row-" + m.id());
    b.setOnAction(e -> bench.focus().select(new PlanItem.OfMark(m.id())));
    b.setOnMouseClicked(e -> also(new PlanItem.OfMark(m.id()), e));
    order.listenTo(b);
    b.setAccessibleText(words().say("desk.cards.mark.marks.row", name, kind));
    return b;
  }

  /** A click with Shift or Ctrl, which a button does not hear, picks one more. */
  private void also(PlanItem mark, MouseEvent e) {
    if (e.isStillSincePress() && (e.isShiftDown() || e.isShortcutDown())) {
      bench.focus().toggle(mark);
    }
  }

  /** Rows count from the topmost, the order of laying from the first laid. */
  private void moved(int row, int to) {
    int last = shown.size() - 1;
    FloorArea area = bench.focus().area().orElseThrow();
    String id = shown.get(last - row).id();
    bench.desk().push(new MarkEdit.Reorder(area.id(), id, Math.max(0, last - to)));
  }

  @Override
  protected void refresh() {
    List<Mark> now = bench.focus().area().map(FloorArea::marks).orElse(List.of());
    if (!now.equals(shown) || !bench.focus().selected().equals(picked)) {
      shown = now;
      picked = bench.focus().selected();
      bench.focus().area().ifPresent(this::fill);
    }
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().map(a -> !a.marks().isEmpty()).orElse(false);
  }
}
