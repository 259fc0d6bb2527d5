package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.panel.Panel;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** Returned drawings with one fault each: the verdict, the kind, the place, the size. */
class ProofFaultTableTest {
  private final ProofCases bicycle = ProofCases.icon("bicycle.svg");

  /** How the shop laid the drawing on its page. */
  private enum Laid {
    AS_PLANNED,
    TURNED;

    Affine pose() {
      return this == AS_PLANNED ? Affine.IDENTITY : Affine.turn(2.1).then(Affine.move(300, 7000));
    }
  }

  /** A plan of a certain width, with three panels of equal width. */
  private record Job(Region openings, Bounds blank) {
    ProofPlan plan() {
      List<Panel> panels = new ArrayList<>();
      double third = blank.width() / 3;
      for (int i = 0; i < 3; i++) {
        double from = Math.max(0, i * third - (i > 0 ? 12 : 0));
        panels.add(
            new Panel(
                String.valueOf("ABC".charAt(i)),
                new Bounds(from, 0, (i + 1) * third, blank.maxY())));
      }
      return new ProofPlan(openings, blank, panels);
    }

    Region mask() {
      return Region.rectangle(blank).minus(openings);
    }
  }

  private Job job(double width) {
    double s = width / (bicycle.blank().width() - 100);
    Region open =
        bicycle
            .openings()
            .map(Affine.move(-50, -50).then(Affine.scale(s, s)).then(Affine.move(50, 50)));
    return new Job(open, new Bounds(0, 0, width + 100, (bicycle.blank().height() - 100) * s + 100));
  }

  private static ShopDrawing.Piece shaded(Region region, Affine pose) {
    return new ShopDrawing.Piece(
        region.rings().stream().map(r -> r.map(pose)).toList(),
        FillRule.EVEN_ODD,
        Optional.of("#404a55"));
  }

  private static ShopDrawing.Piece line(Bounds b, Affine pose) {
    return new ShopDrawing.Piece(
        List.of(Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY()).map(pose)),
        FillRule.NONZERO,
        Optional.empty());
  }

  private static ShopDrawing whole(Region open, Bounds edge, Affine pose) {
    return new ShopDrawing(List.of(line(edge, pose), shaded(open, pose)));
  }

  private static ProofReport check(Job job, ShopDrawing drawing) {
    return ProofCheck.run(job.plan(), drawing, ShadingMeaning.PULLED_OUT);
  }

  /** The only fault. */
  private static ProofFault only(ProofReport report, String kind) {
    assertThat(report.verdict()).isEqualTo(ProofVerdict.DO_NOT_CUT);
    assertThat(report.faults())
        .as(() -> report.faults().toString())
        .extracting(ProofFault::kind)
        .containsExactly(kind);
    return report.faults().get(0);
  }

  private static String words(ProofFault fault) {
    return Words.english().say(fault.message(UnitSystem.METRIC));
  }

  private static Affine about(Vec m, Affine what) {
    return Affine.move(-m.x(), -m.y()).then(what).then(Affine.move(m.x(), m.y()));
  }

  @ParameterizedTest
  @EnumSource
  void the_plan_itself_is_cut(Laid laid) {
    for (double width : new double[] {300, 2600, 6200}) {
      Job job = job(width);
      ProofReport r = check(job, whole(job.openings(), job.blank(), laid.pose()));
      assertThat(r.verdict()).isEqualTo(ProofVerdict.CUT);
      assertThat(r.faults()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void openings_10_mm_off_in_a_blank_of_2600_mm_are_shifted_in_it(Laid laid) {
    Job job = job(2500);
    Region moved = job.openings().map(Affine.move(8, -6));
    ProofFault f = only(check(job, whole(moved, job.blank(), laid.pose())), "shifted-in-blank");
    assertThat(f.sizeMm()).isCloseTo(10, within(0.05));
    assertThat(words(f))
        .isEqualTo("The openings are shifted inside their blank, 8 mm to the right and 6 mm up.");
  }

  @Test
  void openings_20_mm_off_in_a_blank_of_6200_mm_are_shifted_in_it() {
    Job job = job(6100);
    Region moved = job.openings().map(Affine.move(-20, 0));
    ProofFault f = only(check(job, whole(moved, job.blank(), Affine.IDENTITY)), "shifted-in-blank");
    assertThat(f.sizeMm()).isCloseTo(20, within(0.05));
  }

  @Test
  void a_hole_of_50_by_50_mm_in_6_m_is_an_added_piece() {
    Job job = job(6000);
    Vec at = job.mask().labelPoint();
    Region hole = Region.rectangle(new Bounds(at.x() - 25, at.y() - 25, at.x() + 25, at.y() + 25));
    ProofFault f =
        only(
            check(job, whole(job.openings().union(hole), job.blank(), Affine.IDENTITY)),
            "piece-added");
    assertThat(f.place().orElseThrow().distanceTo(at)).isLessThan(2);
    assertThat(f.sizeMm()).isCloseTo(50, within(0.5));
  }

  @Test
  void a_patch_in_an_opening_is_a_missing_piece() {
    Job job = job(6000);
    Vec at = job.openings().labelPoint();
    Region patch = Region.rectangle(new Bounds(at.x() - 5, at.y() - 5, at.x() + 5, at.y() + 5));
    ProofFault f =
        only(
            check(job, whole(job.openings().minus(patch), job.blank(), Affine.IDENTITY)),
            "piece-missing");
    assertThat(f.place().orElseThrow().distanceTo(at)).isLessThan(2);
  }

  @ParameterizedTest
  @EnumSource
  void openings_turned_inside_their_blank_are_told_which_way(Laid laid) {
    Job job = job(2500);
    // y runs down, so a turn from x to y is clockwise as read
    Region turned =
        job.openings().map(about(job.blank().middle(), Affine.turn(Math.toRadians(0.5))));
    ProofFault f = only(check(job, whole(turned, job.blank(), laid.pose())), "turned-in-blank");
    assertThat(words(f)).startsWith("The openings are turned inside their blank, 0.50° clockwise");
  }

  @ParameterizedTest
  @EnumSource
  void a_drawing_stretched_in_width_or_height_is_told_so(Laid laid) {
    Job job = job(2500);
    Affine wide = Affine.scale(1.02, 1);
    ProofReport r = check(job, whole(job.openings(), job.blank(), wide.then(laid.pose())));
    assertThat(words(only(r, "stretched")))
        .startsWith("The drawing is stretched in width, 2.0 % more than in height");
    Affine high = Affine.scale(1, 1.01);
    r = check(job, whole(job.openings(), job.blank(), high.then(laid.pose())));
    assertThat(words(only(r, "stretched")))
        .startsWith("The drawing is stretched in height, 1.00 % more than in width");
  }

  @ParameterizedTest
  @EnumSource
  void a_drawing_of_another_size_is_told_by_how_much(Laid laid) {
    Job job = job(2500);
    Affine pose = Affine.scale(0.997, 0.997).then(laid.pose());
    ProofFault f = only(check(job, whole(job.openings(), job.blank(), pose)), "size-off");
    assertThat(words(f)).startsWith("The drawing is 0.30 % too small");
  }

  @ParameterizedTest
  @EnumSource
  void a_mirrored_drawing_is_mirrored(Laid laid) {
    Job job = job(2500);
    Affine pose = Affine.scale(-1, 1).then(laid.pose());
    only(check(job, whole(job.openings(), job.blank(), pose)), "mirrored");
  }

  @Test
  void a_shaded_mask_is_exchanged() {
    Job job = job(2500);
    ShopDrawing d = new ShopDrawing(List.of(shaded(job.mask(), Affine.IDENTITY)));
    only(check(job, d), "polarity-exchanged");
    assertThat(ProofCheck.run(job.plan(), d, ShadingMeaning.STAYS).verdict())
        .isEqualTo(ProofVerdict.CUT);
  }

  @Test
  void polarity_that_cannot_be_told_is_never_a_tick() {
    Job job = job(2500);
    ShopDrawing shaded = whole(job.openings(), job.blank(), Affine.IDENTITY);
    assertThat(ProofCheck.run(job.plan(), shaded, ShadingMeaning.UNKNOWN).verdict())
        .isEqualTo(ProofVerdict.CANNOT_TELL);
    ShopDrawing lines =
        new ShopDrawing(
            List.of(
                line(job.blank(), Affine.IDENTITY),
                new ShopDrawing.Piece(job.openings().rings(), FillRule.NONZERO, Optional.empty())));
    assertThat(check(job, lines).verdict()).isEqualTo(ProofVerdict.CANNOT_TELL);
    assertThat(check(job, lines).faults()).isEmpty();
  }

  @Test
  void a_drawing_that_is_less_sure_than_a_limit_cannot_be_judged() {
    Job job = job(2500);
    ShopDrawing sure = whole(job.openings(), job.blank(), Affine.IDENTITY);
    ShopDrawing scan = new ShopDrawing(sure.pieces(), 1.2);
    assertThat(check(job, scan).verdict()).isEqualTo(ProofVerdict.CANNOT_TELL);
    ProofLimits wide = new ProofLimits(2, 3, 2, 50, 4);
    assertThat(ProofCheck.run(job.plan(), scan, ShadingMeaning.PULLED_OUT, wide).verdict())
        .isEqualTo(ProofVerdict.CUT);
    ProofLimits fine = new ProofLimits(0.01, 2, 1, 25, 3);
    assertThat(ProofCheck.run(job.plan(), sure, ShadingMeaning.PULLED_OUT, fine).verdict())
        .isEqualTo(ProofVerdict.CANNOT_TELL);
  }

  @Test
  void a_blank_without_its_edge_or_with_a_wrong_one_is_told() {
    Job job = job(2500);
    ShopDrawing bare = new ShopDrawing(List.of(shaded(job.openings(), Affine.IDENTITY)));
    only(check(job, bare), "blank-edge-missing");
    Bounds b = job.blank();
    Bounds wide = new Bounds(0, 0, b.maxX() + 4, b.maxY());
    ProofFault f = only(check(job, whole(job.openings(), wide, Affine.IDENTITY)), "blank-edge-off");
    assertThat(f.sizeMm()).isCloseTo(4, within(0.05));
  }

  @Test
  void openings_fatter_or_thinner_all_round_are_told_by_how_much() {
    Job job = job(2500);
    ProofReport fat =
        check(job, whole(job.openings().offset(1.4, 0.01), job.blank(), Affine.IDENTITY));
    assertThat(words(only(fat, "fatter-all-round")))
        .isEqualTo("The openings are fatter all round, by 1.4 mm on each side.");
    ProofReport thin =
        check(job, whole(job.openings().offset(-1.4, 0.01), job.blank(), Affine.IDENTITY));
    only(thin, "thinner-all-round");
    ProofReport little =
        check(job, whole(job.openings().offset(0.6, 0.01), job.blank(), Affine.IDENTITY));
    assertThat(little.verdict()).isEqualTo(ProofVerdict.CUT);
    assertThat(little.notes()).extracting(ProofNote::kind).contains("a-little-fatter");
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 4.5, 8, 12})
  void what_follows_from_openings_much_fatter_or_thinner_is_told_once(double by) {
    Job job = job(2500);
    ProofReport fat =
        check(job, whole(job.openings().offset(by, 0.01), job.blank(), Affine.IDENTITY));
    assertThat(only(fat, "fatter-all-round").sizeMm()).isCloseTo(by, within(0.05 * by));
    ProofReport thin =
        check(job, whole(job.openings().offset(-by, 0.01), job.blank(), Affine.IDENTITY));
    only(thin, "thinner-all-round");
  }

  @Test
  void a_piece_added_besides_is_told_beside_openings_much_fatter() {
    Job job = job(2500);
    Region more = job.openings().offset(5, 0.01).union(box(1100, 60, 1160, 120));
    ProofReport r = check(job, whole(more, job.blank(), Affine.IDENTITY));
    assertThat(r.faults())
        .extracting(ProofFault::kind)
        .containsExactlyInAnyOrder("fatter-all-round", "piece-added");
  }

  @Test
  void curves_cut_into_facets_of_3_mm_are_edges_that_are_off() {
    Job job = job(2500);
    Region facets = job.openings().simplified(3);
    ProofFault f = only(check(job, whole(facets, job.blank(), Affine.IDENTITY)), "edge-off");
    assertThat(f.sizeMm()).isBetween(1.5, 3.4);
    assertThat(((ProofFault.EdgeOff) f).places()).isGreaterThan(10);
    Region fine = job.openings().simplified(0.3);
    assertThat(check(job, whole(fine, job.blank(), Affine.IDENTITY)).verdict())
        .isEqualTo(ProofVerdict.CUT);
  }

  private ShopDrawing panels(Job job, List<Affine> where, Affine pose) {
    List<ShopDrawing.Piece> pieces = new ArrayList<>();
    for (int i = 0; i < where.size(); i++) {
      Bounds box = job.plan().panels().get(i).box();
      Affine there = where.get(i).then(pose);
      pieces.add(line(box, there));
      pieces.add(shaded(job.openings().intersect(Region.rectangle(box)), there));
    }
    return new ShopDrawing(pieces);
  }

  @ParameterizedTest
  @EnumSource
  void panels_lying_apart_are_cut_and_a_missing_one_is_named(Laid laid) {
    Job job = job(2500);
    List<Affine> apart = List.of(Affine.IDENTITY, Affine.move(200, 90), Affine.move(500, -300));
    assertThat(check(job, panels(job, apart, laid.pose())).verdict()).isEqualTo(ProofVerdict.CUT);
    ProofFault f = only(check(job, panels(job, apart.subList(0, 2), laid.pose())), "panel-missing");
    assertThat(words(f)).isEqualTo("Panel C is missing from the drawing.");
  }

  /** One panel is what a shop sends file by file; two of three are a set with a hole in it. */
  @Test
  void one_panel_alone_is_judged_by_itself_and_the_others_are_named() {
    Job job = job(2500);
    ProofReport r = check(job, panels(job, List.of(Affine.IDENTITY), Affine.IDENTITY));
    assertThat(r.verdict()).isEqualTo(ProofVerdict.CUT);
    assertThat(r.panels()).containsExactly("A");
    assertThat(Words.english().say(r.message())).startsWith("Cut panel A:");
    assertThat(r.notes())
        .extracting(n -> Words.english().say(n.message(UnitSystem.METRIC)))
        .contains("Only panel A is in the drawing; nothing is said of panels B, C.");
  }

  @ParameterizedTest
  @EnumSource
  void one_mirrored_panel_is_named(Laid laid) {
    Job job = job(2500);
    Vec m = job.plan().panels().get(1).box().middle();
    Affine mirror = about(m, Affine.scale(-1, 1)).then(Affine.move(200, 90));
    List<Affine> where = List.of(Affine.IDENTITY, mirror, Affine.move(500, -300));
    ProofFault f = only(check(job, panels(job, where, laid.pose())), "panel-mirrored");
    assertThat(words(f)).isEqualTo("Panel B is mirrored and the others are not.");
  }

  /** Words in one of the typefaces that every Java runtime finds. */
  private static Region letters(String words, String face, double height) {
    Font font = new Font(face, Font.PLAIN, 100);
    PathIterator path =
        font.createGlyphVector(new FontRenderContext(null, true, true), words)
            .getOutline()
            .getPathIterator(AffineTransform.getScaleInstance(height / 100, height / 100), 0.1);
    List<Ring> rings = new ArrayList<>();
    List<Vec> points = new ArrayList<>();
    double[] c = new double[6];
    for (; !path.isDone(); path.next()) {
      int kind = path.currentSegment(c);
      if (kind == PathIterator.SEG_CLOSE) {
        rings.add(new Ring(points));
        points = new ArrayList<>();
      } else {
        points.add(new Vec(c[0], c[1]));
      }
    }
    return Region.of(rings, FillRule.NONZERO);
  }

  @Test
  void letters_in_another_typeface_are_one_fault() {
    Job job = job(2500);
    double y = job.blank().maxY() + 200;
    Bounds blank = new Bounds(0, 0, job.blank().maxX(), y + 120);
    Region sans = letters("SPOKE STREET", "DejaVu Sans", 200).map(Affine.move(400, y));
    Region serif = letters("SPOKE STREET", "DejaVu Serif", 200).map(Affine.move(380, y));
    Job lettered = new Job(job.openings().union(sans), blank);
    assertThat(check(lettered, whole(lettered.openings(), blank, Affine.IDENTITY)).verdict())
        .isEqualTo(ProofVerdict.CUT);
    ProofFault f =
        only(
            check(lettered, whole(job.openings().union(serif), blank, Affine.IDENTITY)),
            "other-typeface");
    assertThat(words(f)).startsWith("These letters are another typeface");
  }

  @Test
  void a_drawing_that_is_lettering_alone_in_another_typeface_is_found() {
    Bounds blank = new Bounds(0, 0, 1700, 320);
    Region sans = letters("SPOKE STREET", "DejaVu Sans", 200).map(Affine.move(80, 230));
    Region serif = letters("SPOKE STREET", "DejaVu Serif", 200).map(Affine.move(60, 230));
    only(check(new Job(sans, blank), whole(serif, blank, Affine.IDENTITY)), "other-typeface");
  }
}
