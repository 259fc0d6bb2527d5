package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.DrawnOutline;
import slabwright.inlay.artwork.DrawnOutlines;
import slabwright.pdfin.outline.PdfOutline;
import slabwright.pdfin.outline.PdfOutlines;
import slabwright.shape.FillRule;
import slabwright.shape.Line;
import slabwright.shape.Ring;

/**
 * The shop's drawing as closed outlines in paint order, at the drawing's true size in mm, x right,
 * y down.
 *
 * @param doubt mm that an edge may lie elsewhere than the outlines say
 */
public record ShopDrawing(List<Piece> pieces, double doubt) {
  /** Curves are flattened within 0.02 mm, and both sides are rounded to the grid of 0.001 mm. */
  private static final double OUTLINES_MM = 0.022;

  /** One outline; a bare line has no fill. The fill is {@code #rrggbb}. */
  public record Piece(List<Ring> rings, FillRule rule, Optional<String> fill) {
    public Piece {
      rings = List.copyOf(rings);
    }
  }

  public ShopDrawing {
    pieces = List.copyOf(pieces);
  }

  /** A drawing made of outlines. */
  public ShopDrawing(List<Piece> pieces) {
    this(pieces, OUTLINES_MM);
  }

  /** Closed outlines, and single lines that are joined where they meet end to end. */
  public static ShopDrawing joining(List<Piece> closed, List<Line> lines) {
    List<Piece> all = new ArrayList<>(closed);
    for (Ring ring : RingJoiner.rings(lines)) {
      all.add(new Piece(List.of(ring), FillRule.NONZERO, Optional.empty()));
    }
    return new ShopDrawing(all);
  }

  public static ShopDrawing of(PdfOutlines pdf) {
    List<Piece> pieces = new ArrayList<>();
    for (PdfOutline o : pdf.outlines()) {
      pieces.add(new Piece(o.rings(), o.rule(), o.fill()));
    }
    return joining(pieces, pdf.lines());
  }

  public static ShopDrawing of(DrawnOutlines svg) {
    List<Piece> pieces = new ArrayList<>();
    for (DrawnOutline o : svg.outlines()) {
      pieces.add(new Piece(o.rings(), o.rule(), o.fill()));
    }
    return joining(pieces, svg.lines());
  }
}
