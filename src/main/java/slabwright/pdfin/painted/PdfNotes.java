package slabwright.pdfin.painted;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Notes of a page, each kind once for what it is about. */
final class PdfNotes {
  private final PdfPageFrame frame;
  private final List<PdfNote> notes = new ArrayList<>();
  private final Set<String> said = new HashSet<>();

  PdfNotes(PdfPageFrame frame) {
    this.frame = frame;
  }

  /** Notes something at the middle of a box of the page's own frame. */
  void add(PdfNote.Kind kind, String about, Rectangle2D box) {
    if (said.add(kind + " " + about)) {
      notes.add(new PdfNote(kind, about, frame.middle(box)));
    }
  }

  List<PdfNote> all() {
    return notes;
  }
}
