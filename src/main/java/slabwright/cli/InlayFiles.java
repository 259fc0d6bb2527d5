package slabwright.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.PdfFile;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.cutfile.CutFile;
import slabwright.inlay.cutfile.CutJob;
import slabwright.inlay.cutfile.FilmOrder;
import slabwright.inlay.cutfile.ShopBundle;
import slabwright.inlay.panel.PanelPlan;
import slabwright.site.StencilSpec;
import slabwright.units.UnitSystem;

/** The cut files of one inlay: SVG and PDF for each panel, proof page, and the shop's ZIP. */
record InlayFiles(CutJob job, UnitSystem units, Instant made, boolean fontAccepted) {
  /**
   * Adds the files; a graphic whose letters changed gives none until that is accepted.
   *
   * @param prefix of every name, "" or ending in "/"
   * @return sentences for the person
   */
  List<String> add(OutFolder out, String prefix, Artwork artwork, InlayPlan plan, StencilSpec spec)
      throws IOException {
    List<String> stops =
        artwork.warnings().stream()
            .filter(w -> w.kind().changesLetters())
            .map(ArtworkWarning::text)
            .toList();
    if (plan.panels().isEmpty()) {
      return List.of(job.inlay() + ": no cut file, since no panel fits.");
    }
    if (!stops.isEmpty() && !fontAccepted) {
      List<String> said = new ArrayList<>(stops);
      said.add(
          job.inlay()
              + ": no cut file was written; accept the letters with --accept-font, or send the text as outlines.");
      return said;
    }
    write(out, prefix, plan, plan.panels().get(), spec);
    return List.of();
  }

  private void write(
      OutFolder out, String prefix, InlayPlan plan, PanelPlan panels, StencilSpec spec)
      throws IOException {
    for (CutFile file : job.files(plan.stencils(), panels)) {
      String name = prefix + OutFolder.clean(file.name());
      out.add(name + ".svg", file.svg());
      out.add(name + ".pdf", bytes(file.pdf(made)));
    }
    ShopBundle bundle =
        new ShopBundle(
            job, plan.stencils(), panels, FilmOrder.onRoll(spec.roll().mm()), units, made);
    String base = prefix + OutFolder.clean(job.inlay() + "_" + job.issue().replace(' ', '-'));
    out.add(base + "_proof.pdf", bytes(bundle.proofPdf()));
    ByteArrayOutputStream zip = new ByteArrayOutputStream();
    bundle.write(zip);
    out.add(base + "_sign-shop.zip", zip.toByteArray());
  }

  static byte[] bytes(PdfFile pdf) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    pdf.write(out);
    return out.toByteArray();
  }
}
