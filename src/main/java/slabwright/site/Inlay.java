package slabwright.site;

import slabwright.units.Length;

/**
 * A graphic laid into the floor.
 *
 * @param graphic path of the SVG or PDF, or of the picture to be traced, relative to the plan's
 *     folder and inside it
 * @param accepted SHA-256 of the graphic as last accepted, hex; empty before the first release
 * @param middle centre of the painted bounds on the site
 * @param width of what is painted
 * @param turn of its reading direction ("up" of the graphic), degrees counter-clockwise; 0 reads
 *     towards the site's up
 */
public record Inlay(
    String id,
    String name,
    String graphic,
    String accepted,
    Spot middle,
    Length width,
    double turn,
    StencilSpec spec,
    GraphicSource source) {
  /** An inlay whose graphic comes from nowhere else. */
  public Inlay(
      String id,
      String name,
      String graphic,
      String accepted,
      Spot middle,
      Length width,
      double turn,
      StencilSpec spec) {
    this(id, name, graphic, accepted, middle, width, turn, spec, GraphicSource.ITSELF);
  }

  public Inlay withSpec(StencilSpec other) {
    return new Inlay(id, name, graphic, accepted, middle, width, turn, other, source);
  }

  public Inlay withName(String v) {
    return new Inlay(id, v, graphic, accepted, middle, width, turn, spec, source);
  }

  public Inlay withAccepted(String v) {
    return new Inlay(id, name, graphic, v, middle, width, turn, spec, source);
  }

  public Inlay withMiddle(Spot v) {
    return new Inlay(id, name, graphic, accepted, v, width, turn, spec, source);
  }

  public Inlay withWidth(Length v) {
    return new Inlay(id, name, graphic, accepted, middle, v, turn, spec, source);
  }

  public Inlay withTurn(double v) {
    return new Inlay(id, name, graphic, accepted, middle, width, v, spec, source);
  }

  public Inlay withSource(GraphicSource v) {
    return new Inlay(id, name, graphic, accepted, middle, width, turn, spec, v);
  }
}
