package slabwright.shape;

import java.util.Arrays;
import slabwright.shape.ints.IntGroups;

/**
 * The faces: 0 is the unbounded one. A face has one enclosing cycle and any number of outer ones.
 */
final class FaceTable {
  private final Cycles cycles;
  private final int[] faceOfCycle;
  private final IntGroups cyclesOfFace;

  FaceTable(HalfEdges halves, Cycles cycles) {
    this.cycles = cycles;
    faceOfCycle = new int[cycles.size()];
    Arrays.fill(faceOfCycle, -1);
    int count = 1;
    int components = 0;
    for (int c = 0; c < faceOfCycle.length; c++) {
      components += cycles.component(c) == c ? 1 : 0;
      if (cycles.outer(cycles.component(c)) != c) {
        faceOfCycle[c] = count++;
      }
    }
    nest(halves, components);
    cyclesOfFace = new IntGroups(count, faceOfCycle);
  }

  private void nest(HalfEdges halves, int components) {
    if (components == 1) {
      faceOfCycle[cycles.outer(cycles.component(0))] = 0;
      return;
    }
    new Nesting(halves, cycles, faceOfCycle).run();
  }

  int size() {
    return cyclesOfFace.size();
  }

  int faceOf(int halfEdge) {
    return faceOfCycle[cycles.cycleOf(halfEdge)];
  }

  Cycles cycles() {
    return cycles;
  }

  IntGroups cyclesOfFace() {
    return cyclesOfFace;
  }

  /** Area in mm²; of the unbounded face, less than nothing. */
  double area(int face) {
    double twice = 0;
    for (int i = cyclesOfFace.start(face); i < cyclesOfFace.end(face); i++) {
      twice += cycles.twiceArea(cyclesOfFace.member(i));
    }
    return twice / 2 / (Jts.STEPS_PER_MM * Jts.STEPS_PER_MM);
  }
}
