package slabwright.pdfin.page;

import slabwright.units.Message;

/** Carries a refusal out of the PDF library's callbacks. */
final class PdfBudgetException extends RuntimeException {
  private static final long serialVersionUID = 1;

  // not kept when an exception is written out, which nobody does
  private final transient Message why;

  PdfBudgetException(Message why) {
    super(why.toString());
    this.why = why;
  }

  Message why() {
    return why;
  }
}
