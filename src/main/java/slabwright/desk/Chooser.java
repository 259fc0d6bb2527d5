package slabwright.desk;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the person for a file. */
interface Chooser {
  /** The folder that the next question begins in. */
  void beginIn(Path folder);

  /** A plan to open. */
  Optional<Path> plan();

  /** Where to save a plan. */
  Optional<Path> planToSave(String name);

  /** A graphic: a drawing, or a picture to be traced. */
  Optional<Path> graphic();

  /** A picture or a PDF page to trace over. */
  Optional<Path> picture();

  /** A photo of a place, PNG or JPEG. */
  Optional<Path> photo();

  /** Where to save a PDF. */
  Optional<Path> pdfToSave(String name);

  /** The drawing that the sign shop sent back, SVG or PDF. */
  Optional<Path> proof();

  /** A folder to write sheets or files into. */
  Optional<Path> folder(String what);
}
