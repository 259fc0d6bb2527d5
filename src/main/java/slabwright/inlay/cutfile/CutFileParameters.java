package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;

/**
 * Names the cut files of one inlay.
 *
 * @param inlay the inlay's name
 * @param release the plan's release number; 0 is a draft
 */
public record CutFileParameters(String inlay, int release) {
  /** The cut files of all stencils, in laying order and each in the order of its panels. */
  public List<CutFile> files(StencilSet set, PanelPlan plan) {
    List<CutFile> files = new ArrayList<>();
    for (Stencil stencil : set.stencils()) {
      for (Panel panel : plan.panels()) {
        files.add(file(set, plan, stencil, panel));
      }
    }
    return files;
  }

  private CutFile file(StencilSet set, PanelPlan plan, Stencil stencil, Panel panel) {
    String title = inlay + ", " + issue() + ", panel " + panel.name();
    String step = "";
    if (set.stencils().size() > 1) {
      title += ", stencil " + stencil.layer() + " (" + stencil.colour() + ")";
      step = "_stencil-" + stencil.layer();
    }
    String name =
        slug(inlay, "inlay") + "_" + slug(issue(), "draft") + step + "_panel-" + panel.name();
    return new CutFileBuilder(stencil, panel, plan.laps()).make(name, title);
  }

  /** "release 3", or "draft" before the first. */
  public String issue() {
    return release > 0 ? "release " + release : "draft";
  }

  /** Small letters and digits with single hyphens between; {@code empty} when none is left. */
  public static String slug(String text, String empty) {
    String plain = text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    String trimmed = plain.replaceAll("^-|-$", "");
    return trimmed.isEmpty() ? empty : trimmed;
  }
}
