package slabwright.work.days;

/** Why a step does not start earlier. Waiting for the next morning is part of each. */
public sealed interface BindingConstraint {
  /** Nothing but the first day. */
  record FirstDay() implements BindingConstraint {}

  /** An earlier step has to end and dry. */
  record Step(String id) implements BindingConstraint {}

  /** The people are busy on another step until it ends. */
  record Crew(String id) implements BindingConstraint {}

  /** A tool is in use on another step until it ends. */
  record Tool(String id) implements BindingConstraint {}

  /** The people have breathed what a shift may hold on another step that day. */
  record Air(String id) implements BindingConstraint {}

  /** Vapour of one of the two steps would meet sparks of the other through a shared doorway. */
  record Spark(String id) implements BindingConstraint {}

  /** Dust of one of the two steps would fall into the wet coat of the other. */
  record Dust(String id) implements BindingConstraint {}

  /** The forecast forbids the days before. */
  record Weather() implements BindingConstraint {}

  /** It could start earlier, but then the coat after it would miss its recoat window. */
  record Window(String id) implements BindingConstraint {}

  /** It could start earlier, but then the step that belongs to it would come too late. */
  record Together(String id) implements BindingConstraint {}

  /** Somebody said not before. */
  record NotBefore() implements BindingConstraint {}
}
