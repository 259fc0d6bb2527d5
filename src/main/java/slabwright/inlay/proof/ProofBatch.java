package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.panel.Panel;
import slabwright.shape.Affine;
import slabwright.shape.Region;
import slabwright.units.CieLab;

/**
 * Checks everything that came back of one inlay, whatever it is spread over: pages of PDFs, single
 * files. For each page it finds which stencil it shows, whole or some panels of it, judges the page
 * by itself, and puts together what belongs to one stencil: then a panel that no page shows is
 * missing. A page that shows nothing of the inlay is named.
 */
public final class ProofBatch {
  private static final double NEARLY_AS_LIKE = 0.15;

  /** From which likeness on what is seen in a stencil's colour is taken for that stencil. */
  private static final double LIKE_IN_COLOUR = 0.8;

  /**
   * A stencil as planned.
   *
   * @param stencil its number from 1 in laying order
   * @param dye its colour, where that is one
   */
  public record Wanted(int stencil, ProofPlan plan, Optional<CieLab> dye) {
    public Wanted(int stencil, ProofPlan plan) {
      this(stencil, plan, Optional.empty());
    }

    /** A stencil of an inlay. */
    public static Wanted of(InlayPlan inlay, int stencil) {
      String colour = inlay.stencils().stencils().get(stencil - 1).colour();
      return new Wanted(
          stencil,
          ProofPlan.of(inlay, stencil),
          colour.matches("#[0-9a-fA-F]{6}") ? Optional.of(CieLab.ofHex(colour)) : Optional.empty());
    }
  }

  /** What came back of one stencil. */
  public record Judged(int stencil, ProofPlan plan, ProofReport report) {}

  /** One stencil's report on one page. */
  private record OnPage(ReturnedPage page, ProofReport report) {}

  private final List<Wanted> wanted;
  private final ShadingMeaning shading;
  private final ProofLimits limits;
  private final Map<Integer, List<OnPage>> found = new TreeMap<>();
  private final List<ReturnedPage> ignored = new ArrayList<>();
  private boolean inColours;

  private ProofBatch(List<Wanted> wanted, ShadingMeaning shading, ProofLimits limits) {
    this.wanted = List.copyOf(wanted);
    this.shading = shading;
    this.limits = limits;
  }

  /**
   * Checks the pages.
   *
   * @param wanted the stencils that they may show; at least one
   * @param pages at least one
   * @return one for each stencil of which something came back, in laying order; when nothing did,
   *     the first stencil, not found
   */
  public static List<Judged> run(
      List<Wanted> wanted, List<ReturnedPage> pages, ShadingMeaning shading, ProofLimits limits) {
    return run(wanted, new ReturnedFiles(pages, List.of()), shading, limits);
  }

  /**
   * The same of files of which some may not have been read; the first stencil's notes name them.
   */
  public static List<Judged> run(
      List<Wanted> wanted, ReturnedFiles files, ShadingMeaning shading, ProofLimits limits) {
    ProofBatch batch = new ProofBatch(wanted, shading, limits);
    files.pages().forEach(batch::look);
    List<Judged> all = new ArrayList<>(batch.judged());
    Judged first = all.get(0);
    ProofReport said = first.report.with(List.of(), files.unread());
    all.set(0, new Judged(first.stencil, first.plan, said));
    return all;
  }

  /** How much of the pages looks like the stencils, 0 to the number of pages. */
  public static double likeness(List<Wanted> wanted, List<ReturnedPage> pages) {
    return pages.stream()
        .mapToDouble(
            page -> {
              Map<Wanted, Sighting> coloured = coloured(wanted, page);
              return (coloured.isEmpty() ? sightings(wanted, page) : coloured)
                  .values().stream().mapToDouble(Sighting::likeness).max().orElse(0);
            })
        .sum();
  }

  /** Each stencil sought in what is seen in its colour; none where they aren't found so. */
  private static Map<Wanted, Sighting> coloured(List<Wanted> wanted, ReturnedPage page) {
    Map<Wanted, Sighting> seen = new LinkedHashMap<>();
    ColourSplit.of(wanted, page.drawing()).forEach((w, d) -> seen.put(w, Sighting.of(w.plan, d)));
    seen.values().removeIf(s -> s.likeness() < LIKE_IN_COLOUR);
    return seen.size() < 2 ? Map.of() : seen;
  }

  private static Map<Wanted, Sighting> sightings(List<Wanted> wanted, ReturnedPage page) {
    Map<Wanted, Sighting> seen = new LinkedHashMap<>();
    DrawingContours contours = DrawingContours.of(page.drawing());
    wanted.forEach(w -> seen.put(w, Sighting.of(w.plan, page.drawing(), contours)));
    return seen;
  }

  private void look(ReturnedPage page) {
    Map<Wanted, Sighting> coloured = coloured(wanted, page);
    coloured.forEach((w, s) -> add(w, page, onBlank(w.plan, s, s.scale.drawing())));
    inColours |= !coloured.isEmpty();
    if (coloured.isEmpty()) {
      lookForOne(page);
    }
  }

  private void lookForOne(ReturnedPage page) {
    Map<Wanted, ProofReport> reports = new LinkedHashMap<>();
    candidates(page)
        .forEach(
            (w, sighting) -> {
              ProofReport report = onBlank(w.plan, sighting, page.drawing());
              if (!isNotFound(report)) {
                reports.put(w, report);
              }
            });
    boolean anyRight = reports.values().stream().anyMatch(r -> r.faults().isEmpty());
    if (reports.isEmpty()) {
      ignored.add(page);
    } else if (anyRight) {
      reports.values().removeIf(r -> !r.faults().isEmpty());
      OptionalInt named = page.stencilInName();
      boolean said =
          named.isPresent()
              && reports.keySet().stream().anyMatch(w -> w.stencil == named.getAsInt());
      reports.forEach(
          (w, r) -> {
            if (!said || w.stencil == named.getAsInt()) {
              add(w, page, r);
            }
          });
    } else {
      Map.Entry<Wanted, ProofReport> best =
          reports.entrySet().stream()
              .min(
                  Comparator.comparingInt((Map.Entry<Wanted, ProofReport> e) -> rank(e.getValue()))
                      .thenComparingDouble(e -> -e.getValue().overlap()))
              .orElseThrow();
      add(best.getKey(), page, best.getValue());
    }
  }

  /** Where the edge is not that of the local blank it may be that of the whole one. */
  private ProofReport onBlank(ProofPlan plan, Sighting sighting, ShopDrawing drawing) {
    ProofReport local = ProofCheck.run(sighting, shading, limits);
    if (plan.onWhole().isEmpty() || local.faults().isEmpty() || !isEdgeOff(local)) {
      return local;
    }
    ProofReport whole = ProofCheck.run(plan.onWhole().get(), drawing, shading, limits);
    return isNotFound(whole) || isEdgeOff(whole)
        ? local
        : whole
            .of(plan.cutPanels().stream().map(Panel::name).toList())
            .with(List.of(), List.of(new ProofNote.OnWholeBlank()));
  }

  private static boolean isEdgeOff(ProofReport report) {
    return isNotFound(report)
        || report.faults().stream()
            .anyMatch(
                f ->
                    f instanceof ProofFault.EdgeMissing
                        || f instanceof ProofFault.BlankEdgeOff
                        || f instanceof PanelFault.PanelMissing);
  }

  private static int rank(ProofReport report) {
    return report.faults().size();
  }

  /** The stencils that the page looks like. */
  private Map<Wanted, Sighting> candidates(ReturnedPage page) {
    Map<Wanted, Sighting> seen = sightings(wanted, page);
    if (seen.size() > 1) {
      double best = seen.values().stream().mapToDouble(Sighting::likeness).max().orElse(0);
      seen.values().removeIf(s -> s.likeness() == 0 || s.likeness() < best - NEARLY_AS_LIKE);
    }
    return seen;
  }

  private static boolean isNotFound(ProofReport report) {
    return report.faults().stream().anyMatch(f -> f instanceof ProofFault.NotFound);
  }

  private void add(Wanted w, ReturnedPage page, ProofReport report) {
    List<ProofFault> more = new ArrayList<>();
    page.stencilInName()
        .ifPresent(
            named -> {
              if (named != w.stencil) {
                more.add(new LabelFault.StencilMisnamed(page.file(), named, w.stencil));
              }
            });
    found
        .computeIfAbsent(w.stencil, n -> new ArrayList<>())
        .add(new OnPage(page, report.with(more, List.of())));
  }

  private List<Judged> judged() {
    if (found.isEmpty()) {
      Wanted first = wanted.get(0);
      ProofReport none = ProofCheck.run(first.plan, new ShopDrawing(List.of()), shading, limits);
      return List.of(new Judged(first.stencil, first.plan, none));
    }
    List<ProofNote> general = general();
    List<Judged> all = new ArrayList<>();
    for (Wanted w : wanted) {
      if (found.containsKey(w.stencil)) {
        ProofReport report = new StencilPages(w.plan, found.get(w.stencil)).report();
        all.add(
            new Judged(
                w.stencil, w.plan, report.with(List.of(), all.isEmpty() ? general : List.of())));
      }
    }
    return all;
  }

  /** What is said once for all stencils. */
  private List<ProofNote> general() {
    List<ProofNote> notes = new ArrayList<>();
    if (inColours) {
      notes.add(new ProofNote.AllInColour());
    }
    ignored.forEach(p -> notes.add(new ProofNote.PageIgnored(p.file(), p.page())));
    List<Integer> absent =
        wanted.stream()
            .filter(w -> !w.plan.openings().isEmpty())
            .map(Wanted::stencil)
            .filter(n -> !found.containsKey(n))
            .toList();
    if (!absent.isEmpty()) {
      notes.add(new ProofNote.StencilsAbsent(absent));
    }
    return notes;
  }

  /** Several pages of one stencil as one report. */
  private record StencilPages(ProofPlan plan, List<OnPage> pages) {
    ProofReport report() {
      if (pages.size() == 1) {
        return pages.get(0).report;
      }
      Set<String> panels = new TreeSet<>();
      pages.forEach(p -> shown(p.report, panels));
      List<ProofReport> reports = pages.stream().map(OnPage::report).toList();
      List<Panel> absent =
          plan.cutPanels().stream().filter(p -> !panels.contains(p.name())).toList();
      Region drawn = Region.union(reports.stream().map(ProofReport::drawn).toList());
      return new ProofReport(
          reports.get(0).limits(),
          plan.panels().stream().map(Panel::name).filter(panels::contains).toList(),
          faults(reports, panels, absent),
          notes(reports, panels, absent),
          reports.stream().map(ProofReport::figures).reduce(ProofFigures.NONE, ProofFigures::and),
          ProofReport.overlap(plan.openings(), drawn),
          drawn,
          Region.union(reports.stream().map(ProofReport::missing).toList()),
          Region.union(reports.stream().map(ProofReport::added).toList()),
          reports.stream().map(ProofReport::poses).<Affine>mapMulti(List::forEach).toList());
    }

    /**
     * A second page with one and the same piece shows another that is cut alike, if there is one.
     */
    private void shown(ProofReport report, Set<String> panels) {
      boolean again = report.panels().size() == 1 && panels.containsAll(report.panels());
      if (again) {
        plan.twins(report.panels().get(0)).stream()
            .filter(t -> !panels.contains(t))
            .findFirst()
            .ifPresent(panels::add);
      } else {
        panels.addAll(report.panels());
      }
    }

    private List<ProofFault> faults(
        List<ProofReport> reports, Set<String> panels, List<Panel> absent) {
      List<ProofFault> all = new ArrayList<>();
      boolean allMirrored = reports.stream().allMatch(StencilPages::isMirrored);
      for (ProofReport report : reports) {
        for (ProofFault f : report.faults()) {
          ProofFault said = f;
          if (f instanceof ProofFault.Mirrored && !allMirrored) {
            said = panel(report).<ProofFault>map(StencilPages::mirrored).orElse(f);
          }
          if (!(f instanceof PanelFault.PanelMissing)) {
            all.add(said);
          }
        }
      }
      if (panels.size() > 1) {
        absent.forEach(p -> all.add(PanelFault.PanelMissing.of(p)));
      }
      return ProofReport.onceEach(all.stream().distinct().toList());
    }

    private static boolean isMirrored(ProofReport report) {
      return report.faults().stream().anyMatch(f -> f instanceof ProofFault.Mirrored);
    }

    private static PanelFault.PanelMirrored mirrored(Panel panel) {
      return PanelFault.PanelMirrored.of(panel.name(), panel.box());
    }

    /** The panel that a page shows alone. */
    private Optional<Panel> panel(ProofReport report) {
      return report.panels().size() == 1
          ? plan.panels().stream().filter(p -> p.name().equals(report.panels().get(0))).findFirst()
          : Optional.empty();
    }

    private static List<ProofNote> notes(
        List<ProofReport> reports, Set<String> panels, List<Panel> absent) {
      List<ProofNote> all = new ArrayList<>();
      for (ProofReport report : reports) {
        for (ProofNote n : report.notes()) {
          boolean pageWise =
              n instanceof ProofNote.OnePanelAlone || n instanceof ProofNote.PanelsApart;
          if (!pageWise && all.stream().noneMatch(o -> o.equals(n))) {
            all.add(n);
          }
        }
      }
      if (panels.size() == 1 && !absent.isEmpty()) {
        all.add(
            new ProofNote.OnePanelAlone(
                panels.iterator().next(), absent.stream().map(Panel::name).toList()));
      }
      return all;
    }
  }
}
