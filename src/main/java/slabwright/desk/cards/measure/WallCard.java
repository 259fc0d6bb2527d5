package slabwright.desk.cards.measure;

import java.util.List;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.Walls;
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
    super("Wall");
    this.bench = bench;
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
    rows.choice(
            "Ends at",
            List.of(PieceKind.values()),
            WallCard::word,
            () -> piece().map(OutlinePiece::kind).orElse(PieceKind.WALL),
            k -> set(k, piece().orElseThrow().rise()))
        .setId("wall-kind");
    rows.length("Length", this::length, this::setLength).id("wall-length");
    rows.length(
            "Bulge",
            () -> piece().map(OutlinePiece::rise).orElse(Length.ZERO),
            v -> set(piece().orElseThrow().kind(), v))
        .id("wall-bulge");
    rows.sentence(
        () ->
            "Bulge: how far the wall arches out to the right as the corners are walked; 0 is"
                + " straight. Or drag its dot.",
        "card-hint");
  }

  private static String word(PieceKind k) {
    return switch (k) {
      case WALL -> "a wall";
      case OPEN_EDGE -> "an open edge";
      case KERB -> "a kerb";
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
        .map(i -> "Wall " + CornerName.wall(i, area().outline().size()))
        .orElseGet(super::title);
  }

  @Override
  public boolean isWanted() {
    return wall().isPresent();
  }
}
