package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.inlay.artwork.DrawnOutline;
import slabwright.inlay.artwork.DrawnOutlines;
import slabwright.inlay.cutfile.CutLayer;
import slabwright.pdfin.outline.PdfOutline;
import slabwright.pdfin.outline.PdfOutlines;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * The shop's drawing as closed outlines in paint order, at the size its page states in mm, x right,
 * y down. What our own pen layer holds is left out.
 *
 * @param words texts kept as text
 * @param weedCuts lines of our own layer of cuts that divide waste
 * @param painted what shows of each color, strokes as areas and cut by clips; empty where the fills
 *     among the pieces say it all
 * @param doubt mm that an edge may lie elsewhere than the outlines say
 */
public record ShopDrawing(
    List<Piece> pieces, List<Words> words, List<Line> weedCuts, List<Piece> painted, double doubt) {
  /** Curves are flattened within 0.02 mm, and both sides are rounded to the grid of 0.001 mm. */
  private static final double OUTLINES_MM = 0.022;

  private static final double GRID_MM = 0.002;

  /** What an outline is known to be. */
  public enum Role {
    /** Nothing says it. */
    UNKNOWN,
    /** A line of our own kiss-cut layer: the edge of an opening. */
    OPENING_EDGE,
    /** A line of our own through-cut layer: the edge of a panel. */
    PANEL_EDGE,
    /** A fill of our own proof page's shading: what is weeded. */
    WEEDED,
    /** A line of our own layer of cuts that divide waste. */
    WASTE_CUT,
    /** A letter of a text kept as text. */
    LETTER,
    /** Seen in a picture, which states no size. */
    UNSIZED,
    /** The area that a stroke covers, among what is painted. */
    STROKE
  }

  /** One outline; a bare line has no fill. The fill is {@code #rrggbb}. */
  public record Piece(List<Ring> rings, FillRule rule, Optional<String> fill, Role role) {
    public Piece {
      rings = List.copyOf(rings);
    }

    /** An outline of which nothing is known. */
    public Piece(List<Ring> rings, FillRule rule, Optional<String> fill) {
      this(rings, rule, fill, Role.UNKNOWN);
    }

    private Piece map(Affine map) {
      return new Piece(rings.stream().map(r -> r.map(map)).toList(), rule, fill, role);
    }
  }

  /** A text and its middle. */
  public record Words(String text, Vec at) {}

  private record OpenLine(Line line, Role role) {}

  public ShopDrawing {
    pieces = List.copyOf(pieces);
    words = List.copyOf(words);
    weedCuts = List.copyOf(weedCuts);
    painted = List.copyOf(painted);
  }

  /** A drawing made of outlines without words. */
  public ShopDrawing(List<Piece> pieces, double doubt) {
    this(pieces, List.of(), List.of(), List.of(), doubt);
  }

  /** A drawing made of outlines. */
  public ShopDrawing(List<Piece> pieces) {
    this(pieces, OUTLINES_MM);
  }

  /** Closed outlines, and single lines that are joined where they meet end to end. */
  public static ShopDrawing joining(List<Piece> closed, List<Line> lines) {
    List<OpenLine> open = lines.stream().map(l -> new OpenLine(l, Role.UNKNOWN)).toList();
    return joining(closed, open, List.of(), OUTLINES_MM);
  }

  private static ShopDrawing joining(
      List<Piece> closed, List<OpenLine> open, List<Words> words, double doubt) {
    List<Piece> all = new ArrayList<>(closed);
    List<Ring> edges = closed.stream().flatMap(p -> p.rings().stream()).toList();
    List<Line> weedCuts = ofRole(open, Role.WASTE_CUT);
    for (Role role : Role.values()) {
      List<Line> lines = role == Role.WASTE_CUT ? List.of() : ofRole(open, role);
      for (Ring ring : RingJoiner.rings(lines, edges)) {
        all.add(new Piece(List.of(ring), FillRule.NONZERO, Optional.empty(), role));
      }
    }
    return new ShopDrawing(all, words, weedCuts, List.of(), doubt);
  }

  private static List<Line> ofRole(List<OpenLine> open, Role role) {
    return open.stream().filter(l -> l.role == role).map(OpenLine::line).toList();
  }

  public static ShopDrawing of(PdfOutlines pdf) {
    List<Piece> pieces = new ArrayList<>();
    for (PdfOutline o : pdf.outlines()) {
      role(o.layer()).ifPresent(r -> pieces.add(new Piece(o.rings(), o.rule(), o.fill(), r)));
    }
    List<OpenLine> lines = new ArrayList<>();
    for (PdfOutlines.PdfLine l : pdf.lines()) {
      role(l.layer()).ifPresent(r -> lines.add(new OpenLine(l.line(), r)));
    }
    List<Words> words = pdf.words().stream().map(x -> new Words(x.text(), x.at())).toList();
    return joining(pieces, lines, words, pdf.doubt() + GRID_MM);
  }

  public static ShopDrawing of(DrawnOutlines svg) {
    List<Piece> pieces = new ArrayList<>();
    for (DrawnOutline o : svg.outlines()) {
      role(o.layer()).ifPresent(r -> pieces.add(new Piece(o.rings(), o.rule(), o.fill(), r)));
    }
    List<OpenLine> lines = new ArrayList<>();
    for (DrawnOutlines.DrawnLine l : svg.lines()) {
      role(l.layer()).ifPresent(r -> lines.add(new OpenLine(l.line(), r)));
    }
    List<Words> words = svg.words().stream().map(x -> new Words(x.text(), x.at())).toList();
    return joining(pieces, lines, words, svg.doubt() + GRID_MM).painted(svg.painted().areas());
  }

  /** The same with what shows of each color. */
  ShopDrawing painted(List<DrawnOutline> areas) {
    List<Piece> seen = new ArrayList<>();
    for (DrawnOutline a : areas) {
      Role role = a.layer().equals(DrawnOutlines.STROKES) ? Role.STROKE : Role.UNKNOWN;
      seen.add(new Piece(a.rings(), a.rule(), a.fill(), role));
    }
    return new ShopDrawing(pieces, words, weedCuts, seen, doubt);
  }

  /** Whether our own layers say what an outline is. */
  boolean isOurs() {
    return pieces.stream()
        .map(Piece::role)
        .anyMatch(r -> r != Role.UNKNOWN && r != Role.LETTER && r != Role.UNSIZED);
  }

  /** All that is filled as it shows, in paint order. */
  List<Piece> filled() {
    return painted.isEmpty() ? pieces.stream().filter(p -> p.fill().isPresent()).toList() : painted;
  }

  /** What a layer's name says; empty for what is drawn and never cut. */
  private static Optional<Role> role(String layer) {
    if (layer.equals(DrawnOutlines.WORDS)) {
      return Optional.of(Role.LETTER);
    }
    if (layer.equals(DrawnOutlines.UNSIZED)) {
      return Optional.of(Role.UNSIZED);
    }
    Optional<CutLayer> own = CutLayer.of(layer);
    return own.isEmpty() ? Optional.of(Role.UNKNOWN) : role(own.get());
  }

  private static Optional<Role> role(CutLayer layer) {
    return switch (layer) {
      case KISS_CUT -> Optional.of(Role.OPENING_EDGE);
      case THROUGH_CUT -> Optional.of(Role.PANEL_EDGE);
      case WEEDED -> Optional.of(Role.WEEDED);
      case WEED_CUT -> Optional.of(Role.WASTE_CUT);
      case PEN -> Optional.empty();
    };
  }

  /** The drawing {@code by} times as large. */
  ShopDrawing scaled(double by) {
    Affine map = Affine.scale(by, by);
    return new ShopDrawing(
        pieces.stream().map(p -> p.map(map)).toList(),
        words.stream().map(x -> new Words(x.text, x.at.times(by))).toList(),
        weedCuts.stream().map(l -> l.map(map)).toList(),
        painted.stream().map(p -> p.map(map)).toList(),
        doubt * by);
  }

  /** The same without letters of texts. */
  ShopDrawing withoutLetters() {
    return new ShopDrawing(
        pieces.stream().filter(p -> p.role != Role.LETTER).toList(),
        words,
        weedCuts,
        painted,
        doubt);
  }

  /** The same with the texts of the page that it was seen on. */
  ShopDrawing worded(PdfOutlines page) {
    List<Words> all = page.words().stream().map(x -> new Words(x.text(), x.at())).toList();
    return new ShopDrawing(pieces, all, weedCuts, painted, doubt);
  }

  boolean has(Role role) {
    return pieces.stream().anyMatch(p -> p.role == role);
  }

  /** The same with a text that stands for the whole, in its middle. */
  ShopDrawing named(String text) {
    List<Ring> rings = pieces.stream().flatMap(p -> p.rings.stream()).toList();
    if (rings.isEmpty()) {
      return this;
    }
    Bounds all = Bounds.EMPTY;
    for (Ring r : rings) {
      all = all.including(r.bounds());
    }
    Words whole = new Words(text, all.middle());
    return new ShopDrawing(
        pieces, Stream.concat(words.stream(), Stream.of(whole)).toList(), weedCuts, painted, doubt);
  }
}
