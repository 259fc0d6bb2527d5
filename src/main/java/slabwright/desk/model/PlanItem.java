package slabwright.desk.model;

import slabwright.site.FloorArea;

/** One thing of a floor area that can be picked. */
public sealed interface PlanItem {
  /** Whether it is still there. */
  boolean isIn(FloorArea area);

  /** A mark by its id. */
  record OfMark(String id) implements PlanItem {
    @Override
    public boolean isIn(FloorArea area) {
      return area.mark(id).isPresent();
    }
  }

  /** A corner of the outline by its number. */
  record OfCorner(int index) implements PlanItem {
    @Override
    public boolean isIn(FloorArea area) {
      return index < area.outline().size();
    }
  }

  /** A wall of the outline by its number. */
  record OfWall(int index) implements PlanItem {
    @Override
    public boolean isIn(FloorArea area) {
      return index < area.outline().size();
    }
  }

  /** A doorway by its id. */
  record OfDoorway(String id) implements PlanItem {
    @Override
    public boolean isIn(FloorArea area) {
      return area.doorways().stream().anyMatch(d -> d.id().equals(id));
    }
  }

  /** A seam of an inlay's panels by its number. */
  record OfSeam(String inlay, int index) implements PlanItem {
    @Override
    public boolean isIn(FloorArea area) {
      return area.inlay(inlay)
          .filter(i -> i.spec().changes().seams().map(s -> index < s.places().size()).orElse(true))
          .isPresent();
    }
  }

  /** An inlay by its id. */
  record OfInlay(String id) implements PlanItem {
    @Override
    public boolean isIn(FloorArea area) {
      return area.inlay(id).isPresent();
    }
  }
}
