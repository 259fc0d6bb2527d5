package slabwright.desk.model;

/** The parts of the desk that its screens share. */
public record DeskContext(Desk desk, Selection focus, DeskSettings settings) {}
