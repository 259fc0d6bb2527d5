package slabwright.inlay;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.Finding;
import slabwright.shape.Bounds;
import slabwright.site.ColourChoice;
import slabwright.site.StencilSpec;

/**
 * A graphic's dyed colours in laying order. Frame: mm, x right, y down.
 *
 * @param painted bounds of all that the graphic paints, dyed or not; its middle is the anchor
 * @param layers disjoint regions in the same frame as {@code painted}
 * @param findings what is to be said of the choice of colours
 */
public record DyedGraphic(Bounds painted, List<DyeLayer> layers, List<Finding> findings) {
  public DyedGraphic {
    layers = List.copyOf(layers);
    findings = List.copyOf(findings);
  }

  /** How to read a graphic of this width for these settings. */
  public static ArtworkOptions options(double widthMm, StencilSpec spec) {
    Set<String> ignored =
        spec.colours().stream()
            .filter(c -> c.use() == ColourChoice.Use.IGNORE)
            .map(ColourChoice::colour)
            .collect(Collectors.toSet());
    return ArtworkOptions.ofWidth(widthMm).withMergeDeltaE(spec.mergeDeltaE()).ignoring(ignored);
  }

  /**
   * The colours that the settings dye, in the order chosen; when none is chosen, every colour that
   * is not left or ignored, lightest first.
   */
  public static DyedGraphic of(Artwork artwork, StencilSpec spec) {
    return new DyeLayerBuilder(artwork, spec).build();
  }
}
