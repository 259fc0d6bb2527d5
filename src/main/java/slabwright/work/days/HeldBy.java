package slabwright.work.days;

/** Why a step does not start earlier. Waiting for the next morning is part of each. */
public sealed interface HeldBy {
  /** Nothing but the first day. */
  record FirstDay() implements HeldBy {}

  /** An earlier step has to end and dry. */
  record Step(String id) implements HeldBy {}

  /** The people are busy on another step until it ends. */
  record Crew(String id) implements HeldBy {}

  /** It could start earlier, but then the coat after it would miss its recoat window. */
  record Window(String id) implements HeldBy {}

  /** Somebody said not before. */
  record Asked() implements HeldBy {}
}
