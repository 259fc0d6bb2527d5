package slabwright.pdfin.painted;

import java.awt.geom.Rectangle2D;
import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.pdfbox.cos.COSDictionary;

/** The layers that what is painted now lies in, the innermost last; one that is off hides it. */
final class PdfLayerStack {
  private final OptionalContent layers;
  private final PdfNotes notes;
  private final Deque<Boolean> open = new ArrayDeque<>();
  private int off;

  PdfLayerStack(OptionalContent layers, PdfNotes notes) {
    this.layers = layers;
    this.notes = notes;
  }

  /** Opens a stretch in a layer; null is none. */
  void begin(COSDictionary layer) {
    boolean hides = layers.isHidden(layer);
    open.push(hides);
    if (hides) {
      off++;
      notes.add(PdfNote.Kind.HIDDEN_LAYER, "", new Rectangle2D.Double());
    }
  }

  /** Closes the stretch opened last; a file may close more than it opened. */
  void end() {
    Boolean hid = open.poll();
    if (hid != null && hid) {
      off--;
    }
  }

  boolean isHidden() {
    return off > 0;
  }

  /** Whether this thing, here, is hidden by its own layer or by one around it. */
  boolean isHidden(COSDictionary layer) {
    return isHidden() || layers.isHidden(layer);
  }
}
