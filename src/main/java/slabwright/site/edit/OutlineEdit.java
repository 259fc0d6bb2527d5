package slabwright.site.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.PieceKind;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.Message;

/** Edits of a floor area's outline and its doorways. Marks that follow a wall move with it. */
public sealed interface OutlineEdit extends AreaEdit {
  /** Replaces the outline, piece for piece where the count stays. */
  record SetOutline(String areaId, List<OutlinePiece> to) implements OutlineEdit {
    public SetOutline {
      to = List.copyOf(to);
    }

    @Override
    public Message name() {
      return Message.of("site.outline-edit.change-outline");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(MarkFollowing.withOutline(area, to));
    }
  }

  /** Moves one corner. */
  record MoveCorner(String areaId, int corner, Spot to) implements OutlineEdit {
    @Override
    public Message name() {
      return Message.of("site.outline-edit.move-corner");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      if (corner < 0 || corner >= area.outline().size()) {
        return Optional.empty();
      }
      List<OutlinePiece> next = new ArrayList<>(area.outline());
      OutlinePiece old = next.get(corner);
      next.set(corner, new OutlinePiece(to, old.kind(), old.rise()));
      return Optional.of(MarkFollowing.withOutline(area, next));
    }
  }

  /** Adds a corner on a piece, which becomes two straight pieces of the same kind. */
  record AddCorner(String areaId, int piece, Spot at) implements OutlineEdit {
    @Override
    public Message name() {
      return Message.of("site.outline-edit.add-corner");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      if (piece < 0 || piece >= area.outline().size()) {
        return Optional.empty();
      }
      return Optional.of(CornerEdits.addCorner(area, piece, at));
    }

    /** Photos stay with the corners that they were pinned to. */
    @Override
    public Optional<Site> change(Site site) {
      return OutlineEdit.super
          .change(site)
          .map(s -> CornerEdits.renumbered(s, areaId, c -> c > piece ? c + 1 : c));
    }
  }

  /** Takes a corner away; the pieces on both sides become one. */
  record RemoveCorner(String areaId, int corner) implements OutlineEdit {
    @Override
    public Message name() {
      return Message.of("site.outline-edit.remove-corner");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      if (corner < 0 || corner >= area.outline().size()) {
        return Optional.empty();
      }
      return Optional.of(CornerEdits.removeCorner(area, corner));
    }

    /** Photos of the corner itself go to the one before it. */
    @Override
    public Optional<Site> change(Site site) {
      int first = site.area(areaId).map(a -> a.outline().size() - 2).orElse(0);
      return OutlineEdit.super
          .change(site)
          .map(
              s ->
                  CornerEdits.renumbered(
                      s, areaId, c -> c < corner ? c : c == 0 ? Math.max(0, first) : c - 1));
    }
  }

  /** Says what a piece is and how far it bulges. */
  record SetPiece(String areaId, int piece, PieceKind kind, Length rise) implements OutlineEdit {
    @Override
    public Message name() {
      return Message.of("site.outline-edit.change-wall");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      if (piece < 0 || piece >= area.outline().size()) {
        return Optional.empty();
      }
      List<OutlinePiece> next = new ArrayList<>(area.outline());
      next.set(piece, new OutlinePiece(next.get(piece).from(), kind, rise));
      return Optional.of(area.withOutline(next));
    }
  }

  /** Adds a doorway, or changes the one with its id. */
  record PutDoorway(String areaId, Doorway doorway) implements OutlineEdit {
    @Override
    public Message name() {
      return Message.of("site.outline-edit.place-doorway");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withDoorways(ListEdits.put(area.doorways(), doorway, Doorway::id)));
    }
  }

  /** Takes a doorway away. */
  record RemoveDoorway(String areaId, String doorwayId) implements OutlineEdit {
    @Override
    public Message name() {
      return Message.of("site.outline-edit.remove-doorway");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return ListEdits.without(area.doorways(), doorwayId, Doorway::id).map(area::withDoorways);
    }
  }
}
