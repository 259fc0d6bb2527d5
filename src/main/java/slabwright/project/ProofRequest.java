package slabwright.project;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.proof.ProofBatch;
import slabwright.inlay.proof.ProofLimits;
import slabwright.inlay.proof.ProofVerdict;
import slabwright.inlay.proof.ReturnedFiles;
import slabwright.inlay.proof.ShadingMeaning;
import slabwright.sheets.json.ProofJson;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * What came back from the sign shop against the plan. Inlay, stencil and panels are found by
 * themselves unless they are given.
 *
 * @param inlay its id
 * @param stencil from 1, in laying order
 * @param files the drawings, SVG or PDF; at least one
 * @param page of each PDF, from 1; absent is every page
 */
public record ProofRequest(
    Optional<String> inlay,
    OptionalInt stencil,
    List<Path> files,
    OptionalInt page,
    ShadingMeaning shading,
    ProofLimits limits) {
  public ProofRequest {
    files = List.copyOf(files);
  }

  /** What the check found of one inlay, stencil by stencil; at least one. */
  public record Checked(String inlay, List<ProofBatch.Judged> stencils) {
    public Checked {
      stencils = List.copyOf(stencils);
    }

    /** The gravest of all stencils. */
    public ProofVerdict verdict() {
      return ProofVerdict.gravest(stencils.stream().map(s -> s.report().verdict()).toList());
    }

    /** One JSON object on one line, the same in every language; its keys stand in docs/json.md. */
    public String json(UnitSystem units) {
      return ProofJson.line(stencils, verdict(), inlay, units, Words.english());
    }
  }

  /**
   * Checks the drawings.
   *
   * @param folder the plan's, where its graphics lie
   * @throws RefusedInput when the plan has no such inlay or stencil, or none of the drawings can be
   *     read
   */
  public Checked check(Site site, Path folder) throws RefusedInput, IOException {
    List<String> ids =
        site.areas().stream().flatMap(a -> a.inlays().stream()).map(Inlay::id).toList();
    if (inlay.isPresent() && !ids.contains(inlay.get())) {
      throw noInlay(ids);
    }
    ReturnedFiles came = read(ReturnedFiles.read(files, page));
    Map<String, List<ProofBatch.Wanted>> inlays = wanted(site, folder);
    String found =
        inlays.size() == 1
            ? inlays.keySet().iterator().next()
            : inlays.keySet().stream()
                .max(
                    Comparator.comparingDouble(
                        id -> ProofBatch.likeness(inlays.get(id), came.pages())))
                .orElseThrow();
    return new Checked(found, ProofBatch.run(inlays.get(found), came, shading, limits));
  }

  private static ReturnedFiles read(Result<ReturnedFiles> files) throws RefusedInput {
    if (files instanceof Result.Refused<ReturnedFiles> refused) {
      throw RefusedInput.of(refused.refusals());
    }
    return files.orThrow();
  }

  /** The stencils that may have come back, by inlay. */
  private Map<String, List<ProofBatch.Wanted>> wanted(Site site, Path folder)
      throws RefusedInput, IOException {
    List<String> planned = new ArrayList<>();
    Map<String, List<ProofBatch.Wanted>> inlays = new LinkedHashMap<>();
    for (AreaResult area : new AreaCache().of(site, folder, () -> false)) {
      for (PlacedInlay placed : area.inlays()) {
        planned.add(placed.inlay().id());
        if (inlay.isEmpty() || inlay.get().equals(placed.inlay().id())) {
          inlays.put(placed.inlay().id(), wanted(placed.plan()));
        }
      }
    }
    if (inlays.isEmpty()) {
      throw noInlay(planned);
    }
    return inlays;
  }

  private RefusedInput noInlay(List<String> ids) {
    return RefusedInput.of(
        Message.of("project.proof-request.no-inlay", inlay.orElse(""), String.join(", ", ids)));
  }

  private List<ProofBatch.Wanted> wanted(InlayPlan plan) throws RefusedInput {
    int count = plan.stencils().stencils().size();
    if (count == 0
        || (stencil.isPresent() && (stencil.getAsInt() < 1 || stencil.getAsInt() > count))) {
      throw RefusedInput.of(
          Message.of("project.proof-request.no-stencil", stencil.orElse(1), count));
    }
    List<ProofBatch.Wanted> all = new ArrayList<>();
    for (int n = 1; n <= count; n++) {
      if (stencil.isEmpty() || stencil.getAsInt() == n) {
        all.add(ProofBatch.Wanted.of(plan, n));
      }
    }
    return all;
  }
}
