package slabwright.sheets.page;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import slabwright.drawing.paint.PdfFile;
import slabwright.drawing.paint.SvgFonts;
import slabwright.drawing.paint.SvgPainter;

/** Pages as files: all in one PDF, or each as an SVG. */
public final class SheetFiles {
  private SheetFiles() {}

  /** Writes all pages as one PDF, dated the day; the stream stays open. */
  public static void pdf(List<PrintedPage> pages, String title, LocalDate day, OutputStream out)
      throws IOException {
    pdf(pages, title, day, out, n -> {});
  }

  /**
   * Writes all pages as one PDF, dated the day; the stream stays open.
   *
   * @param before told before each page how many are done; may throw to give up
   */
  public static void pdf(
      List<PrintedPage> pages, String title, LocalDate day, OutputStream out, IntConsumer before)
      throws IOException {
    Instant made = day.atStartOfDay().toInstant(ZoneOffset.UTC);
    new PdfFile(title, made, pages.stream().map(PrintedPage::drawing).toList()).write(out, before);
  }

  /** Every page as an SVG, by its file name, in page order. */
  public static Map<String, String> svgs(List<PrintedPage> pages) throws IOException {
    Map<String, String> files = new LinkedHashMap<>();
    try (SvgFonts fonts = new SvgFonts()) {
      for (PrintedPage page : pages) {
        files.put(page.name() + ".svg", SvgPainter.write(page.drawing(), page.title(), fonts));
      }
    }
    return files;
  }
}
