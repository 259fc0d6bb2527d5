package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import slabwright.shape.Arrangement;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Layer;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.units.CieLab;

/**
 * The whole graphic in its colours, as shops show it for approval, taken apart: for each stencil a
 * drawing of what is seen in its colour, and of the outlines around that.
 */
final class ColourSplit {
  /** Shops and printers shift a colour; two dyes of one graphic lie farther apart. */
  private static final double SAME_COLOUR = 15;

  /** Pens of technical drawings are thinner on paper; common practice, no source. */
  private static final double WIDEST_PEN_MM = 0.5;

  private ColourSplit() {}

  /**
   * A drawing for each stencil whose colour is on the page; nothing where fewer than two are, or
   * where two stencils would take the same one.
   */
  static Map<ProofBatch.Wanted, ShopDrawing> of(
      List<ProofBatch.Wanted> wanted, ShopDrawing drawing) {
    Map<ProofBatch.Wanted, String> fills = fills(wanted, drawing);
    if (fills.size() < 2 || new HashSet<>(fills.values()).size() < fills.size()) {
      return Map.of();
    }
    Shown shown = Shown.of(drawing, fills.values());
    Map<String, Region> seen = seen(shown.pieces);
    Map<ProofBatch.Wanted, ShopDrawing> split = new LinkedHashMap<>();
    fills.forEach((w, fill) -> split.put(w, inColour(drawing, fill, seen, shown.doubt)));
    return split;
  }

  /**
   * What covers something.
   *
   * @param doubt mm, with half of the widest pen that is left out
   */
  private record Shown(List<ShopDrawing.Piece> pieces, double doubt) {
    /**
     * All but pen lines: thin strokes in a color that is neither a dye, nor paper, nor filled
     * anywhere. They show where an edge is, or a size, and cover nothing.
     */
    static Shown of(ShopDrawing drawing, Collection<String> dyes) {
      Set<String> covering = new HashSet<>(dyes);
      drawing.filled().stream()
          .filter(p -> p.role() != ShopDrawing.Role.STROKE)
          .forEach(p -> p.fill().ifPresent(covering::add));
      List<ShopDrawing.Piece> pieces = new ArrayList<>();
      double pen = 0;
      for (ShopDrawing.Piece p : drawing.filled()) {
        String colour = p.fill().orElseThrow();
        double wide = p.role() == ShopDrawing.Role.STROKE ? width(p) : Double.MAX_VALUE;
        if (wide > WIDEST_PEN_MM
            || covering.contains(colour)
            || CieLab.ofHex(colour).l() >= DrawingContours.PAPER) {
          pieces.add(p);
        } else {
          pen = Math.max(pen, wide);
        }
      }
      return new Shown(pieces, drawing.doubt() + pen / 2);
    }
  }

  /** How wide a stroke is whose area this is, mm. */
  private static double width(ShopDrawing.Piece stroke) {
    double area = stroke.rings().stream().mapToDouble(Ring::signedArea).sum();
    double length = stroke.rings().stream().mapToDouble(Ring::length).sum();
    return 2 * Math.abs(area) / length;
  }

  /** The fill on the page that comes nearest to each stencil's colour. */
  private static Map<ProofBatch.Wanted, String> fills(
      List<ProofBatch.Wanted> wanted, ShopDrawing drawing) {
    Map<ProofBatch.Wanted, String> nearest = new LinkedHashMap<>();
    Set<String> drawn =
        drawing.filled().stream().flatMap(p -> p.fill().stream()).collect(Collectors.toSet());
    if (drawing.isOurs() || drawn.size() < 2) {
      return nearest;
    }
    for (ProofBatch.Wanted w : wanted) {
      w.dye()
          .flatMap(
              dye ->
                  drawn.stream()
                      .min(
                          Comparator.comparingDouble((String f) -> CieLab.ofHex(f).deltaE(dye))
                              .thenComparing(f -> f))
                      .filter(f -> CieLab.ofHex(f).deltaE(dye) <= SAME_COLOUR))
          .ifPresent(f -> nearest.put(w, f));
    }
    return nearest;
  }

  /** Whether an outline may be the edge of the blank that holds this. */
  private static boolean isAround(Bounds outline, Bounds own) {
    return outline.including(own).equals(outline);
  }

  /** What is seen of each fill, what lies under others left out. */
  private static Map<String, Region> seen(List<ShopDrawing.Piece> filled) {
    List<Layer> layers =
        IntStream.range(0, filled.size())
            .mapToObj(i -> new Layer(i, filled.get(i).rings(), filled.get(i).rule()))
            .toList();
    return Arrangement.of(layers)
        .partition(a -> a.isEmpty() ? Optional.empty() : filled.get(a.top()).fill());
  }

  private static ShopDrawing inColour(
      ShopDrawing drawing, String fill, Map<String, Region> seen, double doubt) {
    Region own = seen.getOrDefault(fill, Region.empty());
    List<ShopDrawing.Piece> pieces = new ArrayList<>();
    for (ShopDrawing.Piece p : drawing.pieces()) {
      List<Ring> around =
          p.rings().stream().filter(r -> isAround(r.bounds(), own.bounds())).toList();
      if (!around.isEmpty() && !p.fill().equals(Optional.of(fill))) {
        pieces.add(new ShopDrawing.Piece(around, p.rule(), Optional.empty(), p.role()));
      }
    }
    ShopDrawing.Role role =
        drawing.has(ShopDrawing.Role.UNSIZED) ? ShopDrawing.Role.UNSIZED : ShopDrawing.Role.UNKNOWN;
    pieces.add(new ShopDrawing.Piece(own.rings(), FillRule.EVEN_ODD, Optional.of(fill), role));
    return new ShopDrawing(pieces, drawing.words(), drawing.weedCuts(), List.of(), doubt);
  }
}
