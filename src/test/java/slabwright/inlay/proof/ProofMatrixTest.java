package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.batik.Icons;
import slabwright.inlay.proof.ProofCases.Case;
import slabwright.shape.Affine;

/**
 * Shops' drawings of real graphics in many poses and sizes. The full matrix (8 poses and 5 odd
 * angles, 5 scales, 6 cases, every graphic) is the long run; otherwise a fixed thin sample of it.
 */
class ProofMatrixTest {
  private static final double[] SCALES = {0.5, 0.98, 1, 1.02, 2};
  private static final double[] ODD = {7, 33.3, 101, 222.2, 311};
  private static final double SYMMETRIC = 0.98;

  private record Posed(double degrees, boolean mirrored, double scale) {
    Affine affine() {
      return Affine.scale(mirrored ? -scale : scale, scale)
          .then(Affine.turn(Math.toRadians(degrees)))
          .then(Affine.move(123, -45));
    }
  }

  private final Map<Case, Map<String, Integer>> table = new EnumMap<>(Case.class);
  private final List<String> wrong = new ArrayList<>();

  @Test
  void in_a_thin_sample_every_fault_is_told_and_nothing_else() {
    check(false);
  }

  @Test
  @Tag("long")
  void in_the_whole_matrix_every_fault_is_told_and_nothing_else() {
    check(true);
  }

  private void check(boolean full) {
    int graphics = 0;
    int skipped = 0;
    for (String name : names(full)) {
      ProofCases cases = ProofCases.icon(name);
      if (Symmetry.of(cases.openings()).worst() >= SYMMETRIC || cases.removable().isEmpty()) {
        skipped++;
      } else if (full || graphics < 3) {
        graphics++;
        runAll(cases, graphics, full);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "proof: %d graphics, %d set aside as symmetric or of one piece%n",
        graphics,
        skipped);
    table.forEach((row, told) -> System.out.println("  " + row + " -> " + told));
    assertThat(graphics).isGreaterThanOrEqualTo(full ? 20 : 3);
    assertThat(wrong).isEmpty();
  }

  /** Every fortieth icon; the sample looks at a few of them. */
  private static List<String> names(boolean full) {
    List<String> all = new ArrayList<>(Icons.all().keySet());
    List<String> some = new ArrayList<>();
    for (int i = 7; i < all.size(); i += full ? 28 : 190) {
      some.add(all.get(i));
    }
    return some;
  }

  private void runAll(ProofCases cases, int graphic, boolean full) {
    int i = graphic;
    for (Posed posed : poses()) {
      for (Case which : Case.values()) {
        if (full || i++ % 61 == 0) {
          run(cases, which, posed);
        }
      }
    }
  }

  private static List<Posed> poses() {
    List<Posed> poses = new ArrayList<>();
    for (double scale : SCALES) {
      for (int quarter = 0; quarter < 4; quarter++) {
        poses.add(new Posed(90.0 * quarter, false, scale));
        poses.add(new Posed(90.0 * quarter, true, scale));
      }
      for (int k = 0; k < ODD.length; k++) {
        poses.add(new Posed(ODD[k], k % 2 == 1, scale));
      }
    }
    return poses;
  }

  private void run(ProofCases cases, Case which, Posed posed) {
    ShopDrawing drawing = cases.drawing(which, posed.affine(), cases.name().hashCode());
    ProofReport report = ProofCheck.run(cases.plan(), drawing, ShadingMeaning.PULLED_OUT);
    String told = told(report, posed);
    table.computeIfAbsent(which, k -> new TreeMap<>()).merge(told, 1, Integer::sum);
    if (!told.equals(which.name())) {
      wrong.add(
          "%s %s %s: %s %s %s"
              .formatted(cases.name(), which, posed, told, report.faults(), report.notes()));
    }
  }

  /** The one case that explains all faults and notes, given the true pose; or what is odd. */
  private static String told(ProofReport report, Posed posed) {
    List<String> said =
        report.faults().stream()
            .filter(f -> !(posed.mirrored && f instanceof ProofFault.Mirrored))
            .filter(f -> !(f instanceof ProofFault.WrongSize w && sizeIs(w.percent(), posed.scale)))
            .map(f -> f.getClass().getSimpleName())
            .distinct()
            .collect(Collectors.toCollection(ArrayList::new));
    if (posed.mirrored
        && report.faults().stream().noneMatch(f -> f instanceof ProofFault.Mirrored)) {
      said.add("MirroringNotSaid");
    }
    boolean sized = report.faults().stream().anyMatch(f -> f instanceof ProofFault.WrongSize);
    if (sized != (posed.scale != 1)) {
      said.add("SizeNotSaid");
    }
    for (ProofNote note : report.notes()) {
      if (!(note instanceof ProofNote.Turned)) {
        said.add(note.getClass().getSimpleName());
      }
    }
    return switch (String.join("+", said)) {
      case "" -> Case.RIGHT.name();
      case "Exchanged" -> Case.EXCHANGED.name();
      case "PieceMissing" -> Case.MISSING.name();
      case "PieceAdded" -> Case.ADDED.name();
      case "PanelsApart" -> Case.APART.name();
      case "BesideIgnored" -> Case.LABELS.name();
      default -> String.join("+", said);
    };
  }

  private static boolean sizeIs(double percent, double scale) {
    return Math.abs(percent - (scale - 1) * 100) < 0.1;
  }
}
