package slabwright.inlay.cutfile;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import slabwright.drawing.paint.PdfFile;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.curve.CurvedRing;
import slabwright.units.Message;

/**
 * What is cut from one panel, in the panel's own frame.
 *
 * @param name file name without its ending; carries the release
 * @param title one line for people: inlay, release, panel, stencil
 * @param width of the panel in mm, overlap included
 * @param height of the panel in mm
 * @param openings what is weeded
 * @param outlines the openings' boundaries as curves, inner ones before those around them
 * @param trim the panel's outline, less where an opening already cuts it, so no line is cut twice
 * @param weedCuts inside openings, so that large waste comes off in pieces
 * @param marks drawn, not cut: witness crosses, registration ticks, rings on pieces that stay
 * @param numbers drawn: those of the registration ticks, each beside its own
 * @param label drawn: which panel of which stencil and colour it is, and where its top is
 */
public record CutFile(
    String name,
    Message title,
    double width,
    double height,
    Region openings,
    List<CurvedRing> outlines,
    List<Line> trim,
    List<Line> weedCuts,
    List<Line> marks,
    List<PenNumber> numbers,
    Optional<PenLabel> label) {
  public CutFile {
    outlines = List.copyOf(outlines);
    trim = List.copyOf(trim);
    weedCuts = List.copyOf(weedCuts);
    marks = List.copyOf(marks);
    numbers = List.copyOf(numbers);
  }

  /** All that the pen draws, less the label, mm on the panel. */
  List<Line> drawn() {
    List<Line> all = new ArrayList<>(marks);
    numbers.forEach(n -> all.addAll(n.strokes()));
    return all;
  }

  /**
   * As a PDF of one page in true size.
   *
   * @param made is written into it
   * @param words of the door that makes it
   */
  public PdfFile pdf(Instant made, Function<Message, String> words) {
    return pdf(words.apply(title), made, List.of(this), words);
  }

  /** Several as pages of one PDF in true size. */
  public static PdfFile pdf(
      String title, Instant made, List<CutFile> files, Function<Message, String> words) {
    return PdfCutWriter.pdf(title, made, files, words);
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
