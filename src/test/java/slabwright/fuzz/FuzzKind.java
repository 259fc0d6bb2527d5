package slabwright.fuzz;

import java.io.IOException;
import java.nio.file.Path;

/** The ways into the program that are fuzzed. */
enum FuzzKind {
  PLAN,
  JOB,
  TAPE,
  BOOK,
  FORECAST,
  SVG,
  STENCIL,
  PDF,
  PROOF_SVG,
  PROOF_PDF,
  PICTURE,
  UNDERLAY;

  /**
   * What is fed and how it is read.
   *
   * @param scratch a folder for inputs that are read from a file
   */
  FuzzTarget target(Path scratch) throws IOException {
    return switch (this) {
      case PLAN -> new PlanTarget(false);
      case JOB -> new PlanTarget(true);
      case TAPE -> new TapeTarget();
      case BOOK -> new BookTarget();
      case FORECAST -> new ForecastTarget(scratch);
      case SVG -> new GraphicTarget(GraphicTarget.svgs(), scratch, false);
      case STENCIL -> new GraphicTarget(GraphicTarget.svgs(), scratch, true);
      case PDF -> new GraphicTarget(GraphicTarget.pdfs(), scratch, false);
      case PROOF_SVG -> new ReturnedTarget(GraphicTarget.svgs(), scratch, ".svg");
      case PROOF_PDF -> new ReturnedTarget(GraphicTarget.pdfs(), scratch, ".pdf");
      case PICTURE -> new GraphicTarget(GraphicTarget.pictures(), scratch, false);
      case UNDERLAY -> new UnderlayTarget(scratch);
    };
  }
}
