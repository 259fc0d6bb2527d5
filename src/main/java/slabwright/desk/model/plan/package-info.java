/**
 * The open plan on disk, and what stands beside it; the files themselves are room project's.
 *
 * <p>{@link PlanStorage} (entry: open, save, journal, recover), {@link Releases} (issue, and by a
 * {@link ReleaseReading} what changed since), {@link ShopBookEditor}, {@link TapedRooms} (the
 * readings behind a room). Of plans that are not open: {@link PlanList} and its {@link
 * PlanSketches}, each a {@link PlanSketch}.
 */
package slabwright.desk.model.plan;
