package slabwright.inlay.cutfile;

import java.util.List;
import java.util.stream.Collectors;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Bounds;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/** What the proof page says in words. */
record ProofFacts(StencilSet set, Stencil stencil, PanelPlan plan, UnitSystem units) {
  private static final int MOST_LISTED = 12;

  /** One line of the table. */
  record Row(String label, String words) {}

  List<Row> rows() {
    return List.of(
        new Row("Finished size", size(set.blank()) + ", all panels laid together"),
        new Row("Panels", panels()),
        new Row(
            "Reads",
            "as in the picture, seen from the face of the film: top is top, left is left."),
        new Row("Mirror image", "no. Never mirror these files."),
        new Row(
            "Check with a ruler",
            "panel " + plan.panels().get(0).name() + ", cut, is " + checkWords() + " wide."),
        new Row("Loose pieces", loose()),
        new Row(
            "Length of cut",
            LengthFormat.show(stencil.cutLength(), units) + ", panel outlines not counted"),
        new Row("Changed", changes()),
        new Row("Picture", "not to scale; the cut files are in true millimetres."));
  }

  /** The one length to check: the width of the first panel. */
  String checkWords() {
    return show(plan.panels().get(0).box().width());
  }

  private String panels() {
    if (plan.panels().size() > MOST_LISTED) {
      return "%d, %s to %s, on %d strips; the order lists each with its size, overlap included."
          .formatted(
              plan.panels().size(),
              plan.panels().get(0).name(),
              plan.panels().get(plan.panels().size() - 1).name(),
              plan.seams().size() + 1);
    }
    String each =
        plan.panels().stream()
            .map((Panel p) -> p.name() + " " + size(p.box()))
            .collect(Collectors.joining("; "));
    return plan.laps().isEmpty() ? each : each + ". Sizes include the overlap.";
  }

  private String loose() {
    int n = stencil.loosePieces().size();
    return switch (n) {
      case 0 -> "none";
      case 1 -> "1, marked with a ring: it must stay in its place on the transfer tape.";
      default -> n + ", marked with rings: they must stay in their places on the transfer tape.";
    };
  }

  private String changes() {
    String all =
        set.changes().stream()
            .filter(c -> c.layer() == stencil.layer())
            .map(c -> c.words(units))
            .collect(Collectors.joining(" "));
    return all.isEmpty() ? "nothing: the stencil is as the graphic." : all;
  }

  private String size(Bounds b) {
    return show(b.width()) + " × " + show(b.height());
  }

  private String show(double mm) {
    return units == UnitSystem.METRIC
        ? LengthFormat.plain(Math.rint(mm * 10) / 10) + " mm"
        : LengthFormat.show(mm, units);
  }
}
