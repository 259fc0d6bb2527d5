package slabwright.desk.model;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Ink;
import slabwright.drawing.Look;
import slabwright.drawing.Palette;
import slabwright.drawing.Pattern;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.floor.Edge;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.HandKind;
import slabwright.floor.HandPiece;
import slabwright.site.EdgeClass;

/** What the Prep stage lays over the plan: hand work, pockets, edges by their class. */
public final class PrepInks {
  /** Floor the machine cannot get to stands out from the strips along walls. */
  private static final Look POCKET = Look.of(Pattern.NET, Palette.RED).outlined(0.4);

  /** As on the sheets, with a line round it that is seen where the strip is thin. */
  private static final Look HAND =
      new Look(Palette.AMBER.mixed(Palette.WHITE, 0.7), Pattern.RISING, Palette.AMBER, 1.6, 0.4);

  private PrepInks() {}

  public static List<Ink> of(FloorTakeoff t) {
    List<Ink> inks = new ArrayList<>();
    for (HandPiece p : t.asFound().pieces()) {
      if (p.kind() != HandKind.TRENCH) {
        inks.addAll((p.kind() == HandKind.POCKET ? POCKET : HAND).on(p.region()));
      }
    }
    return inks;
  }

  /** Edges over the walls, each class in its colour. */
  public static List<Ink> edges(FloorTakeoff t) {
    List<Ink> inks = new ArrayList<>();
    for (Edge e : t.edges()) {
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
      case DOORWAY -> Palette.RED;
      case ISLAND -> Palette.BLUE;
      case BOOTH -> Palette.PLUM;
      case COLUMN -> Palette.TEAL;
      case TOP_OR_STEP -> Palette.PURPLE;
    };
  }
}
