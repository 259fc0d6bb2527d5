package slabwright.shape;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import slabwright.shape.ints.IntList;

/**
 * A walk through all faces that only ever steps over one edge. Recorded once and replayed for every
 * labelling: a step into a new face is its half-edge {@code h}, a step back is {@code ~h}.
 */
final class FaceTraversal {
  private final IntList steps = new IntList();

  FaceTraversal(HalfEdges halves, FaceTable faces, BooleanSupplier cancelled) {
    boolean[] seen = new boolean[faces.size()];
    IntList entered = new IntList();
    Walker at = new Walker(halves, faces);
    seen[0] = true;
    at.startFace(0);
    while (true) {
      int h = at.nextEdge();
      if (h >= 0 && !seen[faces.faceOf(HalfEdges.twin(h))]) {
        int face = faces.faceOf(HalfEdges.twin(h));
        seen[face] = true;
        steps.add(h);
        entered.add(h);
        at.startFace(face);
      } else if (h < 0) {
        if (entered.size() == 0) {
          return;
        }
        int back = entered.removeLast();
        steps.add(~back);
        at.resume(faces.faceOf(back));
      }
      if ((steps.size() & 0xFFF) == 0xFFF && cancelled.getAsBoolean()) {
        throw new CancellationException();
      }
    }
  }

  /** Calls {@code visit} once for each face, with the windings right for it. */
  void replay(FaceTable faces, WindingNumbers windings, IntConsumer visit) {
    visit.accept(0);
    for (int i = 0; i < steps.size(); i++) {
      int step = steps.get(i);
      int h = step >= 0 ? step : HalfEdges.twin(~step);
      windings.cross(h);
      if (step >= 0) {
        visit.accept(faces.faceOf(HalfEdges.twin(h)));
      }
    }
  }

  /** Goes round the half-edges of a face, cycle by cycle, and remembers where it stopped. */
  private static final class Walker {
    private final HalfEdges halves;
    private final FaceTable faces;
    private final int[] cyclePosition;
    private final int[] halfEdge;
    private int face;

    Walker(HalfEdges halves, FaceTable faces) {
      this.halves = halves;
      this.faces = faces;
      cyclePosition = new int[faces.size()];
      halfEdge = new int[faces.size()];
    }

    void startFace(int f) {
      face = f;
      cyclePosition[f] = faces.cyclesOfFace().start(f);
      halfEdge[f] = -1;
    }

    void resume(int f) {
      face = f;
    }

    /** The next half-edge of the face, or -1 when all were given. */
    int nextEdge() {
      if (cyclePosition[face] == faces.cyclesOfFace().end(face)) {
        return -1;
      }
      int first = faces.cycles().first(faces.cyclesOfFace().member(cyclePosition[face]));
      int given = halfEdge[face] < 0 ? first : halfEdge[face];
      int following = halves.next(given);
      if (following == first) {
        cyclePosition[face]++;
        halfEdge[face] = -1;
      } else {
        halfEdge[face] = following;
      }
      return given;
    }
  }
}
