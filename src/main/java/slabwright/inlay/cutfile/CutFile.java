package slabwright.inlay.cutfile;

import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import slabwright.drawing.paint.PdfFile;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.units.Message;

/**
 * What is cut from one panel, in the panel's own frame.
 *
 * @param name file name without its ending; carries the release
 * @param title one line for people: inlay, release, panel, stencil
 * @param width of the panel in mm, overlap included
 * @param height of the panel in mm
 * @param openings what is weeded
 * @param trim the panel's outline, less where an opening already cuts it, so no line is cut twice
 * @param witness the crosses that line panels up: drawn or scored, not weeded
 */
public record CutFile(
    String name,
    Message title,
    double width,
    double height,
    Region openings,
    List<Line> trim,
    List<Line> witness) {
  public CutFile {
    trim = List.copyOf(trim);
    witness = List.copyOf(witness);
  }

  /** All closed cut lines: each boundary of each opening once. */
  public List<Ring> rings() {
    return openings.rings();
  }

  /**
   * As a PDF of one page in true size.
   *
   * @param made is written into it
   * @param words of the door that makes it
   */
  public PdfFile pdf(Instant made, Function<Message, String> words) {
    return pdf(words.apply(title), made, List.of(this));
  }

  /** Several as pages of one PDF in true size. */
  public static PdfFile pdf(String title, Instant made, List<CutFile> files) {
    return PdfCutWriter.pdf(title, made, files);
  }

  /**
   * As an SVG drawing in true millimetres.
   *
   * @param words of the door that makes it
   */
  public String svg(Function<Message, String> words) {
    return new SvgCutWriter(this, words).write();
  }
}
