/**
 * What a step of work is, as a type; knows no other package of the work. All of them read a step's
 * type and never the text of its id or name.
 *
 * <p>{@link StepType} (entry), then {@link StepKind} (what is done), {@link StepPlace}, {@link
 * StepSubject}, {@link StepMeans}, {@link CoatNumber}, {@link AirEffect} (what it does to the air);
 * {@link ToolKind}: the kinds of tool a shop book may list; a step holds tools by kind.
 */
package slabwright.work.step;
