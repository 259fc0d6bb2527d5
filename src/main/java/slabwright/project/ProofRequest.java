package slabwright.project;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.proof.ProofCheck;
import slabwright.inlay.proof.ProofLimits;
import slabwright.inlay.proof.ProofPlan;
import slabwright.inlay.proof.ProofReport;
import slabwright.inlay.proof.ReturnedFile;
import slabwright.inlay.proof.ShadingMeaning;
import slabwright.inlay.proof.ShopDrawing;
import slabwright.inlay.stencil.Stencil;
import slabwright.sheets.json.ProofJson;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * The sign shop's drawing against a stencil of the plan.
 *
 * @param inlay its id
 * @param stencil from 1, in laying order
 * @param file the drawing, SVG or PDF
 * @param page of a PDF, from 1
 */
public record ProofRequest(
    String inlay, int stencil, Path file, int page, ShadingMeaning shading, ProofLimits limits) {
  /** What the check found, beside what was wanted. */
  public record Checked(ProofRequest asked, ProofPlan wanted, ProofReport report) {
    /** One JSON object on one line; its keys stand in docs/json.md. */
    public String json(UnitSystem units, Words words) {
      return ProofJson.line(report, asked.inlay, asked.stencil, units, words);
    }
  }

  /**
   * Checks the drawing.
   *
   * @param folder the plan's, where its graphics lie
   * @throws RefusedInput when the plan has no such stencil or the drawing can't be read
   */
  public Checked check(Site site, Path folder) throws RefusedInput, IOException {
    ProofPlan wanted = wanted(site, folder);
    return new Checked(this, wanted, ProofCheck.run(wanted, drawing(), shading, limits));
  }

  private ProofPlan wanted(Site site, Path folder) throws RefusedInput, IOException {
    List<String> ids = new ArrayList<>();
    for (AreaResult area : AreaResult.of(site, folder, () -> false)) {
      for (PlacedInlay placed : area.inlays()) {
        ids.add(placed.inlay().id());
        if (placed.inlay().id().equals(inlay)) {
          return wanted(placed);
        }
      }
    }
    throw RefusedInput.of(
        Message.of("project.proof-request.no-inlay", inlay, String.join(", ", ids)));
  }

  private ProofPlan wanted(PlacedInlay placed) throws RefusedInput {
    List<Stencil> stencils = placed.plan().stencils().stencils();
    if (stencil < 1 || stencil > stencils.size()) {
      throw RefusedInput.of(
          Message.of("project.proof-request.no-stencil", stencil, stencils.size()));
    }
    return ProofPlan.of(placed.plan(), stencil);
  }

  private ShopDrawing drawing() throws RefusedInput, IOException {
    Result<ReturnedFile> read = ReturnedFile.read(file, page);
    if (read instanceof Result.Refused<ReturnedFile> refused) {
      throw RefusedInput.of(refused.refusals());
    }
    return read.orThrow().drawing();
  }
}
