package slabwright.project.export;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Collectors;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.cutfile.CutFileParameters;
import slabwright.inlay.cutfile.CutStop;
import slabwright.inlay.cutfile.FilmOrder;
import slabwright.inlay.cutfile.ShopBundle;
import slabwright.site.StencilSpec;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/**
 * The cut files of one inlay: SVG and PDF for each panel, proof page, and the shop's ZIP.
 *
 * @param inlay its name
 * @param release the plan's release number; 0 is a draft
 * @param papers that go into the shop's ZIP with them
 */
record InlayCutFiles(
    String inlay,
    int release,
    UnitSystem units,
    Instant made,
    SortedMap<String, byte[]> papers,
    Words words) {
  /**
   * Adds the files; a graphic whose letters changed gives none until that is accepted.
   *
   * @param fontAccepted whether letters in a substitute font are accepted
   * @return sentences for the person
   */
  List<String> add(
      FileSink out, Artwork artwork, InlayPlan plan, StencilSpec spec, boolean fontAccepted)
      throws IOException {
    List<CutStop> stops = CutStop.of(inlay, artwork, plan, spec);
    List<String> said =
        stops.stream()
            .filter(s -> !fontAccepted || s.kind() != CutStop.Kind.LETTERS)
            .map(s -> words.say(s.sentence()))
            .collect(Collectors.toCollection(ArrayList::new));
    if (said.isEmpty()) {
      write(out, plan, spec);
    } else if (stops.stream().allMatch(s -> s.kind() == CutStop.Kind.LETTERS)) {
      said.add(words.say("project.inlay-cut-files.not-written", inlay));
    }
    return said;
  }

  /** Adds the files, whatever is asked about the graphic. */
  void write(FileSink out, InlayPlan plan, StencilSpec spec) throws IOException {
    ShopBundle bundle =
        new ShopBundle(
            new CutFileParameters(inlay, release),
            plan.stencils(),
            plan.panels().orElseThrow(),
            FilmOrder.onRoll(spec.roll().mm()),
            units,
            made,
            words::say,
            papers);
    for (Map.Entry<String, byte[]> e : bundle.files().entrySet()) {
      out.add(e.getKey(), e.getValue());
    }
  }
}
