package slabwright.desk;

import java.util.Optional;
import slabwright.sheets.page.PrintedPage;

/** Printing through the system: the question on the screen's thread, the pages off it. */
interface Printing {
  /** A print job the person has said yes to. */
  interface PrintRun {
    /** Whether the page in true size has room on the printer's paper. */
    boolean fits(PrintedPage page);

    /** Prints a page in true size; false when the printer did not take it. */
    boolean page(PrintedPage page);

    void end();

    /** Gives the job up; pages not yet printed are not. */
    void cancel();
  }

  /** Whether there is a printer at all. */
  boolean isReady();

  /** Asks with the system's dialog; empty when the person says no. */
  Optional<PrintRun> ask();
}
