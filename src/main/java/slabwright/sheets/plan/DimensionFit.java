package slabwright.sheets.plan;

import java.util.List;
import slabwright.drawing.Dimension;
import slabwright.drawing.Ink;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextBox;
import slabwright.drawing.label.LabelPlacer;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/** Whether a dimension on paper has room among what is already set; and taking that room. */
record DimensionFit(LabelPlacer labels) {
  boolean fits(Dimension d) {
    for (Ink part : d.parts(Bounds.EMPTY)) {
      boolean good =
          part instanceof Text t
              ? labels.isFree(TextBox.of(t))
              : lines((Stroke) part).stream().allMatch(l -> labels.isClear(l.get(0), l.get(1)));
      if (!good) {
        return false;
      }
    }
    return true;
  }

  void reserve(Dimension d) {
    for (Ink part : d.parts(Bounds.EMPTY)) {
      if (part instanceof Text t) {
        labels.avoid(TextBox.of(t));
      } else {
        lines((Stroke) part).forEach(l -> labels.avoid(l.get(0), l.get(1)));
      }
    }
  }

  private static List<List<Vec>> lines(Stroke stroke) {
    return stroke.lines().stream().map(l -> List.of(l.points().get(0), l.points().get(1))).toList();
  }
}
