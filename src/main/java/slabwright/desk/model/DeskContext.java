package slabwright.desk.model;

import slabwright.words.Words;

/** The parts of the desk that its screens share. */
public record DeskContext(Desk desk, Selection focus, DeskSettings settings, Words words) {}
