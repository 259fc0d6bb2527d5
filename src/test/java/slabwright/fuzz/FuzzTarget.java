package slabwright.fuzz;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import slabwright.units.Message;

/** One way into the program: inputs for it, and what it does with one. */
interface FuzzTarget {
  /** A spoilt input; the same for the same random numbers. */
  byte[] input(Random random) throws IOException;

  /** What the input was refused with, sentence by sentence; empty when it was taken. */
  List<Message> read(byte[] input) throws IOException;
}
