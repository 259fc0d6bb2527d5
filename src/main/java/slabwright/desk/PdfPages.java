package slabwright.desk;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import slabwright.site.Underlay;

/**
 * Which picture beside the plan is which page of which PDF, as long as the desk is open: the plan
 * itself knows pictures alone.
 */
final class PdfPages {
  private final Map<String, Source> known = new HashMap<>();

  /**
   * A page.
   *
   * @param page from 1
   * @param pages of the whole file
   * @param mmPerPixel of paper, as the page was rendered
   */
  record Source(Path pdf, int page, int pages, double mmPerPixel) {
    /** A name for the picture of the page; the first one is named as the file is. */
    String pictureName() {
      String name = pdf.getFileName().toString().replaceFirst("(?i)\\.pdf$", "");
      return name + (page == 1 ? "" : "-page-" + page) + ".png";
    }
  }

  void remember(String picture, Source source) {
    known.put(picture, source);
  }

  Optional<Source> of(Optional<Underlay> underlay) {
    return underlay.map(Underlay::file).map(known::get);
  }
}
