/**
 * Pictures to trace over: photos, scans and PDF pages, brought in clean and laid in true scale.
 *
 * <p>{@link Picture} (entry: reads any of them and keeps pixels alone), a {@link Photo} also says
 * how much smaller than its file it is; {@link PhotoReader} with {@link ExifOrientation} (how the
 * camera was held, of an {@link ExifBlock}), a {@link PlacePhoto} is a small one; {@link
 * PdfPicture} (a page). {@link PicturePlacement} sets it in true scale; {@link PhotoRectifier}
 * makes a {@link RectifiedPhoto}, a slanted photo laid flat.
 */
package slabwright.pdfin.picture;
