package slabwright.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Geometry;

/**
 * Many rings noded together once, and every face between them labelled by the layers that fill it.
 *
 * <p>Rings may cross themselves and one another, coincide, run either way round or have no area.
 * All points are first snapped to the 0.001 mm grid. Zones read off one arrangement are disjoint
 * and their areas sum, because they are made of the same faces. O(n log n) in segments and
 * crossings.
 */
public final class Arrangement {
  private final List<Layer> layers;
  private final int[] ids;
  private final NodingMethod rung;
  private final HalfEdges halves;
  private final FaceTable faces;
  private final FaceTraversal tour;

  /**
   * Nodes all rings of all layers together.
   *
   * @throws IllegalArgumentException when two layers have the same id or a point is not a number
   */
  public static Arrangement of(List<Layer> layers) {
    return new Arrangement(layers, () -> false);
  }

  /**
   * As {@link #of}, given up when {@code cancelled} turns true.
   *
   * @throws CancellationException when it did
   */
  public Arrangement(List<Layer> layers, BooleanSupplier cancelled) {
    this(layers, Noding.joining(cancelled), cancelled);
  }

  /** Noded as {@code noding} does it. */
  Arrangement(List<Layer> layers, Noding noding, BooleanSupplier cancelled) {
    this.layers = layers.stream().sorted(Comparator.comparingInt(Layer::id)).toList();
    ids = this.layers.stream().mapToInt(Layer::id).toArray();
    for (int i = 1; i < ids.length; i++) {
      if (ids[i] == ids[i - 1]) {
        throw new IllegalArgumentException("two layers have the id " + ids[i]);
      }
    }
    List<GridChain> chains = GridChain.of(this.layers);
    List<NodedRun> noded = noding.run(chains);
    rung = noding.rung();
    halves = new HalfEdges(new ArrangementEdges(new NodedSegments(chains, noded)));
    faces = new FaceTable(halves, new Cycles(halves));
    tour = new FaceTraversal(halves, faces, cancelled);
  }

  /** A face: its area in mm² and the ids of the layers that fill it. */
  public record Face(double area, List<Integer> layers) {
    public Face {
      layers = List.copyOf(layers);
    }
  }

  /** Which noding method was needed. */
  public NodingMethod rung() {
    return rung;
  }

  /** The bounded faces. As long as all their layer lists together: meant for small drawings. */
  public List<Face> faces() {
    Face[] list = new Face[faces.size()];
    visit(
        (face, active) ->
            list[face] = new Face(faces.area(face), IntStream.of(active.ids()).boxed().toList()));
    return List.of(list).subList(1, list.length);
  }

  /**
   * Disjoint regions, one for each label that was given, in the order the labels are first met.
   * Faces of one label join without a seam. An empty label leaves a face out; so does, always, the
   * unbounded face.
   */
  public <L> Map<L, Region> partition(Function<ActiveLayers, Optional<L>> label) {
    Labelling<L> labelling = label(label);
    List<Geometry> geometries =
        new DissolveOp(halves, faces, labelling.ofFace).run(labelling.labels.size());
    Map<L, Region> regions = new LinkedHashMap<>();
    for (int i = 0; i < geometries.size(); i++) {
      regions.put(labelling.labels.get(i), Region.wrap(geometries.get(i)));
    }
    return regions;
  }

  /** Every straight piece between two faces whose labels differ, each once. */
  public <L> List<Border<L>> borders(Function<ActiveLayers, Optional<L>> label) {
    Labelling<L> labelling = label(label);
    List<Border<L>> borders = new ArrayList<>();
    for (int h = 0; h < halves.size(); h += 2) {
      int left = labelling.ofFace[faces.faceOf(h)];
      int right = labelling.ofFace[faces.faceOf(HalfEdges.twin(h))];
      if (left != right) {
        borders.add(
            new Border<>(
                labelling.at(left),
                labelling.at(right),
                vec(halves.origin(h)),
                vec(halves.target(h)),
                sources(h >> 1)));
      }
    }
    return borders;
  }

  private List<BorderSource> sources(int edge) {
    List<BorderSource> list = new ArrayList<>();
    ArrangementEdges edges = halves.edges();
    NodedSegments pieces = edges.pieces();
    for (int i = edges.lying().start(edge); i < edges.lying().end(edge); i++) {
      int p = edges.lying().member(i);
      list.add(
          new BorderSource(
              ids[pieces.layer(p)], pieces.ring(p), pieces.segment(p), edges.direction(p) > 0));
    }
    return list;
  }

  private Vec vec(int corner) {
    return new Vec(
        halves.corners().first(corner) / Jts.STEPS_PER_MM,
        halves.corners().second(corner) / Jts.STEPS_PER_MM);
  }

  private <L> Labelling<L> label(Function<ActiveLayers, Optional<L>> label) {
    Labelling<L> labelling = new Labelling<>(faces.size());
    Map<L, Integer> numbers = new LinkedHashMap<>();
    visit(
        (face, active) -> {
          Optional<L> given = face == 0 ? Optional.empty() : label.apply(active);
          labelling.ofFace[face] =
              given.map(l -> numbers.computeIfAbsent(l, k -> numbers.size())).orElse(-1);
        });
    labelling.labels.addAll(numbers.keySet());
    return labelling;
  }

  private void visit(Visitor visitor) {
    WindingNumbers windings = new WindingNumbers(halves.edges(), layers);
    ActiveLayers active = new ActiveLayers(ids, windings);
    tour.replay(faces, windings, face -> visitor.visit(face, active));
  }

  private interface Visitor {
    void visit(int face, ActiveLayers active);
  }

  /** The label of each face as a position in the list, -1 for none. */
  private static final class Labelling<L> {
    final int[] ofFace;
    final List<L> labels = new ArrayList<>();

    Labelling(int faces) {
      ofFace = new int[faces];
    }

    Optional<L> at(int label) {
      return label < 0 ? Optional.empty() : Optional.of(labels.get(label));
    }
  }
}
