/**
 * The layout engine: blocks and drawings to pages. Knows nothing of floors. Millimetres of paper, x
 * right, y down.
 *
 * <p>{@link Paginator} (entry: drafts to pages) and {@link PageDraft}, {@link FramedDraft} (on a
 * frame of its own), {@link MissingPages} (what a fault ended), {@link PrintedPage}, {@link
 * SheetFiles}. The page: {@link PaperSize}, {@link PageFrame}, {@link TypeSizes}, {@link
 * TitleStrip} with {@link TitleStripText}, {@link CheckLine}, {@link Scale}, {@link
 * StandardScales}, {@link SheetContext}, {@link SheetOptions}.
 *
 * <p>Blocks: {@link Block} and its {@link Slice}; {@link Heading}, {@link Paragraph}, {@link Gap},
 * {@link CautionBlock}, {@link BulletBlock}, {@link PairBlock}, {@link KeptBlock}, {@link
 * KeyBlock}, {@link SignatureLine}. Tables: {@link TableBlock}, {@link TableColumn}, {@link
 * TableCell}, {@link TableColumnWidths}, {@link TableLayout}. Setting them over columns and pages:
 * {@link ColumnFlow}, {@link ColumnLayout}, {@link ColumnPages}. {@link TimeFormat} holds times as
 * printed.
 */
package slabwright.sheets.page;
