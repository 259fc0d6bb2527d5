package slabwright.growth;

import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.inlay.artwork.picture.TracedPicture;
import slabwright.inlay.masking.Masking;
import slabwright.inlay.masking.MaskingParameters;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.proof.ProofBatch;
import slabwright.inlay.proof.ProofLimits;
import slabwright.inlay.proof.ProofPlan;
import slabwright.inlay.proof.ReturnedPage;
import slabwright.inlay.proof.ShadingMeaning;
import slabwright.inlay.proof.ShopDrawing;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilCheck;
import slabwright.inlay.stencil.StencilLimits;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Arrangement;
import slabwright.shape.FillRule;
import slabwright.shape.Layer;
import slabwright.sheets.SheetSet;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.SheetOptions;
import slabwright.site.FloorArea;
import slabwright.site.Overspray;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * What each computation costs as the corners or marks of its input double, in CPU time of one
 * thread, the quicker of two runs. A plain program and no part of any build: what else the machine
 * does would decide whether it passes.
 */
public final class GrowthBench {
  private static final int MOST_CORNERS = 200_000;
  private static final int MOST_MARKS = 2_000;
  private static final int DOUBLINGS = 4;

  /** What is timed, once its input of a size has been made. */
  private interface Work {
    Object run();
  }

  private record Part(String name, int most, IntFunction<Work> of) {}

  private GrowthBench() {}

  /**
   * Prints a row for each part: CPU ms at each size, and how many times as much at each doubling.
   *
   * @param arguments words that the names of parts to run contain; all parts without any
   */
  public static void main(String[] arguments) {
    for (Part part : parts()) {
      if (arguments.length == 0 || List.of(arguments).stream().anyMatch(part.name()::contains)) {
        measure(part);
      }
    }
  }

  private static List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("partition", MOST_CORNERS, GrowthBench::partition));
    parts.add(new Part("take-off by marks", MOST_MARKS, n -> takeoff(GrowingFloors.marks(n))));
    parts.add(new Part("take-off by corners", MOST_CORNERS, n -> takeoff(GrowingFloors.walls(n))));
    parts.add(new Part("reach curves by marks", MOST_MARKS, n -> reach(n, ReachAnalysis::curves)));
    parts.add(
        new Part("reach pockets by marks", MOST_MARKS, n -> reach(n, ReachAnalysis::pockets)));
    parts.add(new Part("reach gaps by marks", MOST_MARKS, n -> reach(n, ReachAnalysis::passages)));
    parts.add(new Part("reach strips by marks", MOST_MARKS, n -> reach(n, ReachAnalysis::strips)));
    parts.add(new Part("sheets by marks", MOST_MARKS, GrowthBench::sheets));
    for (boolean rugged : new boolean[] {false, true}) {
      String of = rugged ? " of rugged shores" : " of islands";
      parts.add(new Part("stencil" + of, MOST_CORNERS, n -> stencil(drawing(rugged, n))));
      parts.add(new Part("stencil check" + of, MOST_CORNERS, n -> check(drawing(rugged, n))));
      parts.add(new Part("seams" + of, MOST_CORNERS, n -> seams(drawing(rugged, n))));
      parts.add(new Part("masking" + of, MOST_CORNERS, n -> masking(drawing(rugged, n))));
      parts.add(new Part("proof" + of, MOST_CORNERS, n -> proof(drawing(rugged, n))));
    }
    parts.add(new Part("picture tracer by pixels", 4_000_000, GrowthBench::tracer));
    return parts;
  }

  private static void measure(Part part) {
    int size = part.most() >> DOUBLINGS;
    best(part, size); // so that its code is translated
    System.out.printf("| %s |", part.name());
    List<Double> ms = new ArrayList<>();
    for (; size <= part.most(); size *= 2) {
      ms.add(best(part, size));
      System.out.printf(Locale.ROOT, " %d: %.0f |", size, ms.get(ms.size() - 1));
    }
    for (int i = 1; i < ms.size(); i++) {
      System.out.printf(Locale.ROOT, " %.2f |", ms.get(i) / ms.get(i - 1));
    }
    System.out.println();
  }

  private static double best(Part part, int size) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 2; i++) {
      Work work = part.of().apply(size);
      long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      Object made = work.run();
      long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      if (made.equals("")) {
        throw new IllegalStateException("nothing was made");
      }
      best = Math.min(best, (end - start) / 1e6);
    }
    return best;
  }

  private static Work partition(int corners) {
    List<Layer> layers = GrowingDrawings.overlapping(corners);
    return () ->
        Arrangement.of(layers)
            .partition(a -> a.isEmpty() ? Optional.<Integer>empty() : Optional.of(a.top()));
  }

  private static Work takeoff(FloorArea area) {
    return () -> FloorTakeoff.of(area);
  }

  private static Work reach(int marks, Function<ReachAnalysis, Object> part) {
    FloorTakeoff takeoff = FloorTakeoff.of(GrowingFloors.marks(marks));
    return () -> part.apply(ReachAnalysis.of(takeoff));
  }

  private static Work sheets(int marks) {
    FloorArea area = GrowingFloors.marks(marks);
    AreaResult result = new AreaResult(FloorTakeoff.of(area), List.of(), List.of());
    SheetOptions options =
        new SheetOptions(PaperSize.A4, LocalDate.of(2026, 11, 28), Words.english());
    return () -> SheetSet.of(GrowingFloors.site(area), List.of(result), options);
  }

  private static List<DyeLayer> drawing(boolean rugged, int corners) {
    return rugged ? GrowingDrawings.coast(corners) : GrowingDrawings.islands(corners);
  }

  private static StencilSet set(List<DyeLayer> layers) {
    return StencilSet.of(layers, StencilParameters.usual());
  }

  private static Work stencil(List<DyeLayer> layers) {
    return () -> set(layers);
  }

  private static Work check(List<DyeLayer> layers) {
    List<Stencil> stencils = set(layers).stencils();
    StencilCheck check = new StencilCheck(StencilLimits.forFilm(5), UnitSystem.METRIC);
    return () -> stencils.stream().map(check::of).toList();
  }

  private static Work seams(List<DyeLayer> layers) {
    StencilSet set = set(layers);
    return () -> new SeamPlanner(set, PanelParameters.usual()).best();
  }

  private static Work masking(List<DyeLayer> layers) {
    StencilSet set = set(layers);
    PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best();
    Overspray overspray = StencilSpec.forRoll(Length.mm(1219.2)).overspray();
    return () -> Masking.of(set, plan, MaskingParameters.of(50.8, overspray));
  }

  private static Work proof(List<DyeLayer> layers) {
    StencilSet set = set(layers);
    Stencil stencil = set.stencils().get(0);
    ProofPlan plan = ProofPlan.whole(stencil.openings(), set.blank());
    ShopDrawing drawing =
        new ShopDrawing(
            List.of(
                new ShopDrawing.Piece(
                    stencil.openings().rings(), FillRule.EVEN_ODD, Optional.of("#404a55"))));
    List<ProofBatch.Wanted> wanted = List.of(new ProofBatch.Wanted(1, plan));
    List<ReturnedPage> pages = List.of(new ReturnedPage("shop.svg", 1, drawing));
    return () -> ProofBatch.run(wanted, pages, ShadingMeaning.PULLED_OUT, ProofLimits.USUAL);
  }

  private static Work tracer(int pixels) {
    byte[] png = GrowingDrawings.dots(pixels);
    return () -> TracedPicture.of(png);
  }
}
