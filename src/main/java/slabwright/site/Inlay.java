package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
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
@RecordBuilder
public record Inlay(
    String id,
    String name,
    String graphic,
    String accepted,
    Spot middle,
    Length width,
    double turn,
    StencilSpec spec,
    GraphicSource source)
    implements InlayBuilder.With {
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
}
