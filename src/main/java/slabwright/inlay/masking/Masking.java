package slabwright.inlay.masking;

import java.util.List;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Region;

/**
 * The masking of one inlay.
 *
 * <p>Press band: the mask within the band's width of an opening edge, of a lap or of the blank's
 * rim; the rest of the mask lies loose so that it lifts no dye. Skirt: all floor within the
 * overspray reach of an opening and outside the blank. The reach is the person's; wind, pressure
 * and nozzle change it, so a test spray settles it.
 *
 * @param pressBands one for each stencil, in laying order
 * @param looseMask the rest of each mask
 * @param skirts where paper lies around each stencil's vinyl, in laying order; around local blanks
 *     as far as that colour's own mist lands
 * @param skirt where paper lies around the whole blank
 * @param paper the runs of paper that cover that; none where no stencil lies on the whole blank
 * @param upright where paper must stand up
 */
public record Masking(
    List<Region> pressBands,
    List<Region> looseMask,
    List<Region> skirts,
    Region skirt,
    List<PaperRun> paper,
    List<UprightMasking> upright) {
  public Masking {
    pressBands = List.copyOf(pressBands);
    looseMask = List.copyOf(looseMask);
    skirts = List.copyOf(skirts);
    paper = List.copyOf(paper);
    upright = List.copyOf(upright);
  }

  /** The masking on a floor without end, as before the inlay is placed. */
  public static Masking of(StencilSet set, PanelPlan plan, MaskingParameters rules) {
    return new MaskingBuilder(set, plan, rules).make();
  }

  /** The masking where the inlay lies. */
  public static Masking of(
      StencilSet set, PanelPlan plan, MaskingParameters rules, FloorAround around) {
    return new MaskingBuilder(set, plan, rules).make(around);
  }

  /** Where paper lies around one stencil's vinyl. */
  public Region skirt(Stencil stencil) {
    return skirts.get(stencil.layer() - 1);
  }

  /** Area pressed down, all stencils together, mm². */
  public double pressBandArea() {
    return pressBands.stream().mapToDouble(Region::area).sum();
  }
}
