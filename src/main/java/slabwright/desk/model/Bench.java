package slabwright.desk.model;

/** The parts of the desk that its screens share. */
public record Bench(Desk desk, Focus focus, Settings settings) {}
