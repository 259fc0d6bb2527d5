package slabwright.project.export;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.TreeMap;
import slabwright.inlay.GraphicReader;
import slabwright.inlay.GraphicSettings;
import slabwright.inlay.InlayContext;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.OpenQuestions;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.sheets.json.InlayJson;
import slabwright.site.StencilSpec;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** A graphic computed with no plan around it. */
public sealed interface GraphicResult {
  /** It on one line of JSON, the same in every language: programs read it. */
  String json();

  /** Why it can't be used. */
  record Unusable(Path graphic, Message message) implements GraphicResult {
    @Override
    public String json() {
      return InlayJson.refused(graphic.toString(), Words.english().say(message));
    }
  }

  /** A fault of the program's own, in a sentence. */
  record Failed(Path graphic, String sentence) implements GraphicResult {
    @Override
    public String json() {
      return InlayJson.refused(graphic.toString(), sentence);
    }
  }

  /** Its stencils, panels and masking. */
  record Planned(Path graphic, Artwork artwork, InlayPlan plan, StencilSpec spec, UnitSystem units)
      implements GraphicResult {
    /** What is asked about its colours and not answered. */
    public List<ArtworkQuestion> questions() {
      return OpenQuestions.of(artwork, spec);
    }

    @Override
    public String json() {
      return InlayJson.line(graphic.toString(), artwork, plan, spec, Words.english());
    }

    /**
     * Adds its cut files, a draft, and its numbers as JSON.
     *
     * @param prefix of every name, "" or ending in "/"
     * @param stem what the files and the inlay are called
     * @param fontAccepted whether letters in a substitute font are accepted
     * @return sentences for the person about what was not cut
     */
    public List<String> addTo(
        OutFolder folder, String prefix, String stem, boolean fontAccepted, Words words)
        throws IOException {
      InlayCutFiles files =
          new InlayCutFiles(stem, 0, units, Instant.now(), new TreeMap<>(), words);
      FileSink into = (name, bytes) -> folder.add(prefix + name, bytes);
      List<String> said = files.add(into, artwork, plan, spec, fontAccepted);
      folder.add(
          prefix + stem + ".json",
          InlayJson.pretty(graphic.toString(), artwork, plan, spec, Words.english()));
      return said;
    }
  }

  /**
   * Reads a graphic and plans its stencils.
   *
   * @param width of what it paints, mm
   * @param how its file is read
   * @param units in which findings and cut files write lengths
   * @param asDrawn whether every question about its colours is answered by dyeing them as drawn
   */
  static GraphicResult compute(
      Path graphic,
      double width,
      StencilSpec spec,
      GraphicSettings how,
      UnitSystem units,
      boolean asDrawn) {
    Result<GraphicReader.Reading> reading = reading(graphic, width, spec, how);
    if (reading instanceof Result.Refused<GraphicReader.Reading> refused) {
      return new Unusable(graphic, refused.message());
    }
    GraphicReader.Reading read = reading.orThrow();
    StencilSpec settled = asDrawn ? OpenQuestions.asDrawn(read.artwork(), spec) : spec;
    InlayPlan plan = InlayPlan.of(read.graphic(), settled, InlayContext.graphicAlone().in(units));
    return new Planned(graphic, read.artwork(), plan, settled, units);
  }

  private static Result<GraphicReader.Reading> reading(
      Path graphic, double width, StencilSpec spec, GraphicSettings how) {
    try {
      return GraphicReader.read(graphic, width, spec, how);
    } catch (IOException broken) {
      return Result.refused(Message.of("project.graphic-result.breaks", graphic.toString()));
    }
  }
}
