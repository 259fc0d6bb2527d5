/**
 * Sheets, numbers and cut files as files, for a door that saves on request.
 *
 * <p>{@link SheetExport} (entry) makes one {@link ExportFormat} of a {@link SheetRequest}, {@link
 * CutFileRequest} the cut files. Both give {@link StagedFiles}, which are written all or not at
 * all; {@link SavedFiles} says what was written and what it replaced.
 *
 * <p>{@link ChangeOrderFile} is what a release said otherwise. {@link PacketFiles} are the packets
 * with their {@link PacketIndex}. {@link JobFiles} are the whole main job as the files of one
 * folder, {@link OutFolder} (all or nothing, with a manifest), parts of it side by side as {@link
 * BesideTask}s; {@link GraphicResult} is a graphic with no plan around it, {@link InlayCutFiles}
 * its cut files, {@link ShopPapers} what goes into the sign shop's ZIP with them. {@link
 * NamedFiles} are sheets, numbers and calendars with the names and bytes they have for every door,
 * put into a {@link FileSink}, each by itself ({@link GuardedFiles}). A {@link PictureRequest} is a
 * floor as it should look, {@link PictureFiles} all of them.
 */
package slabwright.project.export;
