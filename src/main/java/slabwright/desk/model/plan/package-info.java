/**
 * The open plan on disk, and what stands beside it; the files themselves are room project's.
 *
 * <p>{@link PlanStorage} (entry: open, save, journal, recover), {@link Releases} (issue, and what
 * changed since), {@link StageStates} (how far each stage has come), {@link ShopBookEditor}, {@link
 * TapedRooms} (the readings behind a room), {@link TapeWalkJournal} (an unfinished walk), {@link
 * PlanQuestions} (each {@link OpenQuestion} that nobody has answered).
 */
package slabwright.desk.model.plan;
