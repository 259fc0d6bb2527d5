/** Pictures to trace over: photos, scans and PDF pages, brought in clean and laid in true scale. */
package slabwright.pdfin.picture;
