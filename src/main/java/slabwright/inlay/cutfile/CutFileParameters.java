package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Region;
import slabwright.units.FileName;
import slabwright.units.Message;

/**
 * Names the cut files of one inlay.
 *
 * @param inlay the inlay's name
 * @param release the plan's release number; 0 is a draft
 */
public record CutFileParameters(String inlay, int release) {
  /**
   * The cut files of all stencils, in laying order and each in the order of its panels; a panel
   * without an opening of the stencil has none.
   */
  public List<CutFile> files(StencilSet set, PanelPlan plan) {
    return files(set, plan, StayingPieces.of(set, plan));
  }

  List<CutFile> files(StencilSet set, PanelPlan plan, StayingPieces staying) {
    List<CutFile> files = new ArrayList<>();
    for (Stencil stencil : set.stencils()) {
      for (Panel panel : plan.cut(stencil)) {
        files.add(file(set, plan.of(stencil), stencil, panel, staying.of(stencil, panel)));
      }
    }
    return files;
  }

  private CutFile file(
      StencilSet set, PanelPlan plan, Stencil stencil, Panel panel, List<Region> staying) {
    boolean one = set.stencils().size() == 1;
    String step = one ? "" : "_stencil-" + stencil.layer();
    String name = fileNameStem() + step + "_panel-" + panel.name();
    Message title = one ? title(panel) : title(panel, stencil);
    return new CutFileBuilder(stencil, panel, plan, staying).make(name, title);
  }

  private Message title(Panel panel) {
    return Message.of("inlay.cut-file.title", inlay, issue(), panel.name());
  }

  private Message title(Panel panel, Stencil stencil) {
    return Message.of(
        "inlay.cut-file.title-of-stencil",
        inlay,
        issue(),
        panel.name(),
        stencil.layer(),
        stencil.colour());
  }

  /** "release 3", or "draft" before the first. */
  public Message issue() {
    return release > 0
        ? Message.of("inlay.cut-file.release", release)
        : Message.of("inlay.cut-file.draft");
  }

  /** What every file's name begins with, the same in every language. */
  String fileNameStem() {
    return FileName.slug(inlay, "inlay") + "_" + (release > 0 ? "release-" + release : "draft");
  }
}
