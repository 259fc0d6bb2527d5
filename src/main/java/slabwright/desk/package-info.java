/**
 * The window put together, and what menus and drops do.
 *
 * <p>{@link DeskApp} (entry, started by {@link DeskLauncher}) opens a {@link DeskWindow} at its
 * {@link WindowPlace}; {@link DeskController} builds a {@link DeskModel} (all computed values) and
 * the actions {@link PlanActions}, {@link EditActions}, {@link InlayActions}, {@link PhotoActions},
 * {@link UnderlayActions} (with {@link UnderlayRectification}, {@link PlacedUnderlay}, {@link
 * PdfPages}) and {@link SheetExports}, which {@link DeskCommands} gives to menus and keys. {@link
 * PlanScreen} shows an open site: {@link CardSets} says which cards a stage shows, {@link
 * StageInks} what it lays over the plan ({@link PlacedInlayInks}, {@link PhotoSigns}), {@link
 * Tally} its figures, {@link PlanQuestions} what nobody has answered, {@link OverSlab} where bars
 * lie over the slab, {@link Arranging} puts in line, {@link ToolFactory} makes the tools, {@link
 * TapeWalkJournal} keeps an unfinished walk, {@link SlabAccess} and {@link CurrentPlanLookup} lead
 * to what lies where, {@link FigureSource} to where a figure comes from; {@link SlabKeys} and
 * {@link FileDrops} listen.
 *
 * <p>{@link SystemServices} is what tests replace: files chosen ({@link Chooser}, {@link
 * WindowChooser}, {@link FolderMemory}), paper ({@link Printing}, {@link FxPrinting}), the {@link
 * UserDataFolder}.
 */
package slabwright.desk;
