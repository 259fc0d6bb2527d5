/**
 * The bars around the slab, and the small controls that everything is made of.
 *
 * <p>{@link TopBar} (entry) holds {@link SiteTitle}, {@link AreaChips}, {@link StageBar} of {@link
 * StageButton} by {@link StageStates}, {@link UndoButtons} and {@link MainMenuButton}; beside the
 * slab {@link ToolPalette}, {@link ZoomButtons}, {@link LookSwitch} and {@link PageList}; below it
 * {@link EntryBar}, {@link NoticeBar}, {@link ProgressStrip} and {@link TallyBar}, which opens
 * {@link OpenList} of each {@link OpenQuestion}. {@link Commands} is the menu and its keys, {@link
 * KeyList} all keys at once, {@link SlabMenu} the one of a place on the slab; {@link Controls} and
 * {@link Icons} make all small controls, {@link Scrolled} holds long lists.
 */
package slabwright.desk.shell;
