package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Colour;
import slabwright.drawing.FillStyle;
import slabwright.drawing.HatchPattern;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.floor.Edge;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.GrindingSplit;
import slabwright.floor.HandWorkKind;
import slabwright.floor.HandWorkPiece;
import slabwright.floor.MachineShare;
import slabwright.floor.reach.MachinePassage;
import slabwright.floor.reach.PocketAccess;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.shape.Vec;
import slabwright.site.EdgeClass;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/** What the Prep stage lays over the plan: hand work, pockets, edges by their class. */
public final class PrepInks {
  /** Floor the machine cannot get to stands out from the strips along walls. */
  private static final FillStyle POCKET = FillStyle.of(HatchPattern.NET, Palette.RED).outlined(0.4);

  /** As on the sheets, with a line round it that is seen where the strip is thin. */
  private static final FillStyle HAND =
      new FillStyle(
          Palette.AMBER.mixed(Palette.WHITE, 0.7), HatchPattern.RISING, Palette.AMBER, 1.6, 0.4);

  /** How far the words of a gap stand beyond it, mm of floor. */
  private static final double CLEAR = 160;

  private PrepInks() {}

  public static List<Ink> of(GrindingSplit g) {
    List<Ink> inks = new ArrayList<>();
    List<MachineShare> shares = g.shares();
    for (int i = 1; i < shares.size(); i++) {
      inks.addAll(MarkStyles.share(i).on(shares.get(i).region()));
    }
    for (HandWorkPiece p : g.pieces()) {
      if (p.kind() != HandWorkKind.TRENCH) {
        inks.addAll((p.kind() == HandWorkKind.POCKET ? POCKET : HAND).on(p.region()));
      }
    }
    return inks;
  }

  /** The narrowest pass to each pocket, with its width, bends that stop a machine, free ends. */
  public static List<Ink> ways(FloorTakeoff t, Optional<ReachAnalysis> ways, UnitSystem units) {
    List<Ink> inks = new ArrayList<>();
    for (Vec end : t.tally().ends()) {
      inks.add(Symbol.of(Symbol.Kind.LOOK, end, 3.2, Palette.PURPLE));
    }
    for (PocketAccess w : ways.map(ReachAnalysis::pockets).orElse(List.of())) {
      w.pass()
          .ifPresent(
              p -> {
                inks.add(Stroke.lines(MarkStyles.GAP, List.of(p.across())));
                String words = LengthFormat.show(p.width(), units);
                Vec from = p.across().points().get(0);
                Vec to = p.across().points().get(1);
                Vec at = to.plus(to.minus(from).unit().times(CLEAR));
                inks.add(Text.middle(at, words, TextStyle.bold(3)));
              });
    }
    for (MachinePassage p : ways.map(ReachAnalysis::passages).orElse(List.of())) {
      if (p.kind() == MachinePassage.Kind.BEND) {
        inks.add(Symbol.of(Symbol.Kind.LOOK, p.where(), 3.2, Palette.RED));
        inks.add(Stroke.lines(MarkStyles.GAP, List.of(p.across())));
      }
    }
    return inks;
  }

  /** Edges over the walls, each class in its colour. */
  public static List<Ink> edges(List<Edge> edges) {
    List<Ink> inks = new ArrayList<>();
    for (Edge e : edges) {
      if (e.kind() != EdgeClass.DOORWAY && e.kind() != EdgeClass.WALL) {
        inks.add(Stroke.lines(Pen.of(0.9, colour(e.kind())), e.lines()));
      }
    }
    return inks;
  }

  /** The colour that an edge class has on the plan and in the card. */
  public static Colour colour(EdgeClass kind) {
    return switch (kind) {
      case WALL -> Palette.INK;
      case OPEN_EDGE -> Palette.OLIVE;
      case KERB -> Palette.GREEN;
      case DOORWAY -> Palette.SOFT;
      case ISLAND -> Palette.BLUE;
      case BOOTH -> Palette.PLUM;
      case COLUMN -> Palette.TEAL;
      case TOP_OR_STEP -> Palette.PURPLE;
    };
  }
}
