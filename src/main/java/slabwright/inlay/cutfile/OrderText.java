package slabwright.inlay.cutfile;

import java.util.List;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.StencilSet;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/** The order as plain text. */
final class OrderText {
  private final UnitSystem units;
  private final StringBuilder out = new StringBuilder();

  OrderText(UnitSystem units) {
    this.units = units;
  }

  String write(
      CutFileParameters job, StencilSet set, PanelPlan plan, FilmOrder order, List<CutFile> files) {
    int stencils = set.stencils().size();
    line("Stencil order: " + job.inlay() + ", " + job.issue());
    line("");
    line("Film width: " + show(order.rollWidth()));
    line("Film kind: " + orAgree(order.kind()));
    line("Tack: " + orAgree(order.tack()));
    line("Film length: " + show(plan.rollLength() * stencils * order.quantity()));
    line("Transfer tape, to cover every panel: " + show(tape(plan, stencils, order)));
    line("Quantity: " + order.quantity() + " of each file");
    line("Finished size, panels laid together: " + size(set.blank().width(), set.blank().height()));
    line("Length of cut: " + show(set.cutLength() * order.quantity()));
    line("Loose pieces that must stay in place on the transfer tape: " + set.looseCount());
    line("");
    line("Weed what the cut lines enclose. Keep the rest. Do not mirror. Do not scale.");
    line("Witness crosses line panels up: mark them, do not weed them.");
    line("Send a proof before cutting.");
    line("");
    files.forEach(f -> line(f.name() + ".svg  " + size(f.width(), f.height())));
    return out.toString();
  }

  private static double tape(PanelPlan plan, int stencils, FilmOrder order) {
    double one = plan.panels().stream().map(Panel::box).mapToDouble(plan.turn()::along).sum();
    return one * stencils * order.quantity();
  }

  private static String orAgree(String text) {
    return text.isBlank() ? "to be agreed with the sign shop" : text;
  }

  private String size(double width, double height) {
    return show(width) + " wide, " + show(height) + " high";
  }

  /** In the person's units, and in millimetres as the files are. */
  private String show(double mm) {
    return LengthFormat.fine(mm, units);
  }

  private void line(String text) {
    out.append(text).append("\r\n");
  }
}
