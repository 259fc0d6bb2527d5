package slabwright.inlay.cutfile;

import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.StencilSet;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/**
 * What the sign shop needs to know besides the cut files; its sentences stand alike in the plain
 * text and on the order's page.
 *
 * @param rollWidth of the film, mm
 * @param quantity how many of each panel
 */
public record FilmOrder(double rollWidth, int quantity) {
  private static final double TEST_PIECE_MM = 300;
  private static final double TEST_PIECE_FOOT = 304.8;

  /** One set on a roll of this width. */
  public static FilmOrder onRoll(double mm) {
    return new FilmOrder(mm, 1);
  }

  /** What film is proposed: common practice, no source. */
  public static Message film() {
    return Message.of("inlay.film-order.film");
  }

  /** Its own colour is nobody's: it is pulled off. */
  public static Message colour() {
    return Message.of("inlay.film-order.colour");
  }

  /** What is ordered to lay the film with. */
  public static Message tape() {
    return Message.of("inlay.film-order.tape");
  }

  /** Length of it for one of each panel, mm. */
  public static double tapeLength(PanelPlan plan, StencilSet set) {
    return set.stencils().stream()
        .mapToDouble(
            s -> plan.cut(s).stream().map(Panel::box).mapToDouble(plan.of(s).turn()::along).sum())
        .sum();
  }

  /** The piece that is pulled off the dyed floor before anything is laid. */
  public static Message testPiece(UnitSystem units) {
    double side = units == UnitSystem.METRIC ? TEST_PIECE_MM : TEST_PIECE_FOOT;
    return Message.of("inlay.film-order.test-piece", LengthFormat.show(side, units));
  }

  /** How it is packed: common practice, no source. */
  public static Message packing() {
    return Message.of("inlay.film-order.packing");
  }

  /** Which files are cut and which only hold the same again or are looked at. */
  public static Message files() {
    return Message.of("inlay.film-order.files");
  }
}
