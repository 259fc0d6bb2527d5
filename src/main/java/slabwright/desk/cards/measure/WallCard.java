package slabwright.desk.cards.measure;

import java.util.List;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.Walls;
import slabwright.desk.model.input.LengthUse;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.PieceKind;
import slabwright.site.edit.OutlineEdit;
import slabwright.tape.CornerName;
import slabwright.units.Length;

/** The picked wall: what it is, how long, how far it bulges. */
public final class WallCard extends Card {
  private final DeskContext bench;
  private final FieldRows rows;

  public WallCard(DeskContext bench) {
    super(bench, "wall", bench.words().say("desk.cards.measure.wall.wall"));
    this.bench = bench;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
    rows.choice(
            words().say("desk.cards.measure.wall.ends-at"),
            List.of(PieceKind.values()),
            this::word,
            () -> piece().map(OutlinePiece::kind).orElse(PieceKind.WALL),
            k -> set(k, piece().orElseThrow().rise()))
        .setId("wall-kind");
    rows.length(
            words().say("desk.cards.measure.wall.length"),
            LengthUse.WALL,
            this::length,
            this::setLength)
        .id("wall-length");
    rows.length(
            words().say("desk.cards.measure.wall.bulge"),
            LengthUse.MARGIN,
            () -> piece().map(OutlinePiece::rise).orElse(Length.ZERO),
            v -> set(piece().orElseThrow().kind(), v))
        .id("wall-bulge");
    rows.sentence(() -> words().say("desk.cards.measure.wall.bulge-how-far-the-wall"), "card-hint");
  }

  private String word(PieceKind k) {
    return switch (k) {
      case WALL -> words().say("desk.cards.measure.wall.a-wall");
      case OPEN_EDGE -> words().say("desk.cards.measure.wall.an-open-edge");
      case KERB -> words().say("desk.cards.measure.wall.a-kerb");
    };
  }

  private Optional<Integer> wall() {
    return bench
        .focus()
        .single()
        .filter(PlanItem.OfWall.class::isInstance)
        .map(p -> ((PlanItem.OfWall) p).index())
        .filter(i -> bench.focus().area().map(a -> i < a.outline().size()).orElse(false));
  }

  private Optional<OutlinePiece> piece() {
    return wall().map(i -> area().outline().get(i));
  }

  private FloorArea area() {
    return bench.focus().area().orElseThrow();
  }

  private Length length() {
    return wall()
        .map(i -> Length.mm(Walls.start(area(), i).distanceTo(Walls.end(area(), i))))
        .orElse(Length.ZERO);
  }

  private void setLength(Length v) {
    wall().ifPresent(i -> bench.desk().push(Walls.lengthened(area(), i, v.mm(), true, true)));
  }

  private void set(PieceKind kind, Length rise) {
    wall().ifPresent(i -> bench.desk().push(new OutlineEdit.SetPiece(area().id(), i, kind, rise)));
  }

  @Override
  protected void refresh() {
    rows.refresh();
  }

  @Override
  protected String title() {
    return wall()
        .map(
            i ->
                words()
                    .say(
                        "desk.cards.measure.wall.wall-2",
                        CornerName.wall(i, area().outline().size())))
        .orElseGet(super::title);
  }

  @Override
  public boolean isWanted() {
    return wall().isPresent();
  }
}
