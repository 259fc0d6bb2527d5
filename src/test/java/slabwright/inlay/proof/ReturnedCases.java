package slabwright.inlay.proof;

import static slabwright.inlay.Graphics.box;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slabwright.drawing.paint.PdfFile;
import slabwright.inlay.Graphics;
import slabwright.inlay.cutfile.CutFile;
import slabwright.inlay.cutfile.CutFileParameters;
import slabwright.inlay.cutfile.FilmOrder;
import slabwright.inlay.cutfile.ShopBundle;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.panel.StripDirection;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.curve.CurvedRing;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** An inlay of two colours on three panels, and what may come back for it: forms × faults. */
final class ReturnedCases {
  /** What the file or files look like. */
  enum Form {
    OWN_PROOF_PAGE,
    OWN_CUT_PDF,
    OWN_CUT_FILES,
    OWN_CUT_FILE_OF_ONE_PANEL,
    WHOLE,
    PANELS_IN_ONE_FILE,
    PANELS_IN_MANY_FILES,
    ONE_PANEL,
    FRAMED_PAGE,
    FRAMED_PAGE_WITH_WORDS_IN_THE_FILM,
    A4_WITH_SCALE,
    A4_WITHOUT_SCALE,
    POLYLINE_EXPORT,
    PNG,
    JPEG,
    SCAN_IN_A_PDF;

    /** Whether nothing in it says how large it is meant to be, or what is pulled out. */
    boolean staysOpen() {
      return this == A4_WITHOUT_SCALE || this == POLYLINE_EXPORT || isPicture();
    }

    boolean isPicture() {
      return this == PNG || this == JPEG || this == SCAN_IN_A_PDF;
    }

    /** Whether it is drawn with other openings too; enough forms, for each takes a while. */
    boolean isChanged() {
      return switch (this) {
        case OWN_PROOF_PAGE, OWN_CUT_FILES, WHOLE, PANELS_IN_ONE_FILE, A4_WITH_SCALE, PNG -> true;
        default -> false;
      };
    }

    /** Whether the whole stencil is in one picture. */
    boolean isWhole() {
      return !isOfPanels() && this != ONE_PANEL && this != OWN_CUT_FILE_OF_ONE_PANEL;
    }

    /** Whether it shows every panel by itself. */
    boolean isOfPanels() {
      return switch (this) {
        case OWN_CUT_PDF, OWN_CUT_FILES, PANELS_IN_ONE_FILE, PANELS_IN_MANY_FILES -> true;
        default -> false;
      };
    }
  }

  /** What is wrong with it. */
  enum Fault {
    NONE,
    MIRRORED,
    TWO_PERCENT_LARGER,
    HALF_SIZE,
    TEN_MM_OFF,
    TURNED_ONE_DEGREE,
    PIECE_MISSING,
    PANEL_MISSING,
    ONE_PANEL_MIRRORED,
    LABELS_SWAPPED,
    /** Wider by 1 %, as high as it was. */
    STRETCHED,
    /** Every opening by 2 mm all round. */
    FATTER,
    /** A square of 50 mm that nobody drew. */
    PIECE_ADDED,
    /** What is inside a letter is pulled out with it. */
    COUNTERS_FILLED;

    /** Whether the openings themselves are others, whatever the file looks like. */
    boolean isOfOpenings() {
      return switch (this) {
        case PIECE_MISSING, STRETCHED, FATTER, PIECE_ADDED, COUNTERS_FILLED -> true;
        default -> false;
      };
    }

    boolean appliesTo(Form form) {
      boolean framed = form == Form.FRAMED_PAGE || form == Form.FRAMED_PAGE_WITH_WORDS_IN_THE_FILM;
      return switch (this) {
        case PANEL_MISSING, ONE_PANEL_MIRRORED -> form.isOfPanels();
        case LABELS_SWAPPED -> form.isOfPanels() || form == Form.OWN_PROOF_PAGE;
        case HALF_SIZE ->
            form == Form.WHOLE || form == Form.OWN_CUT_FILES || form == Form.A4_WITH_SCALE;
        case TWO_PERCENT_LARGER -> !framed && !form.isPicture();
        case TURNED_ONE_DEGREE, PIECE_MISSING -> !framed;
        // in a picture 2 mm and 1 % are less than its doubt
        case STRETCHED, FATTER -> form.isChanged() && !form.isPicture();
        case COUNTERS_FILLED -> form.isChanged() && form.isWhole();
        case PIECE_ADDED -> form.isChanged();
        default -> true;
      };
    }
  }

  private static final Instant MADE = Instant.parse("2026-11-27T08:00:00Z");
  private static final String LINE = "fill=\"none\" stroke=\"#333\" stroke-width=\".2\"";
  private static final String SHADE = "fill=\"#8a9aa5\" fill-rule=\"evenodd\"";

  private final StencilSet set;
  private final PanelPlan panels;
  private final Path folder;
  private final List<Path> files = new ArrayList<>();

  ReturnedCases(Path folder) {
    this.folder = folder;
    Region letter =
        Graphics.letterF(1800).minus(box(100, 60, 200, 160)).union(box(450, 1500, 560, 1570));
    Region ring = Graphics.squareRing().map(Affine.move(1300, 500));
    Region foot = box(700, 1500, 2300, 1800).minus(box(900, 1500, 1300, 1600));
    Region flag = box(1500, 100, 1650, 250).union(box(1650, 150, 2100, 200));
    set =
        StencilSet.of(
            List.of(
                new DyeLayer("black", 0, letter.union(ring)),
                new DyeLayer("red", 50, foot.union(flag))),
            StencilParameters.usual());
    panels =
        new SeamPlanner(set, PanelParameters.usual())
            .at(StripDirection.DOWN, List.of(800.0, 1600.0));
  }

  List<ProofBatch.Wanted> wanted() {
    return set.stencils().stream()
        .map(
            s ->
                new ProofBatch.Wanted(
                    s.layer(), new ProofPlan(s.openings(), set.blank(), panels.panels())))
        .toList();
  }

  /** Writes the files. */
  List<Path> write(Form form, Fault fault) throws IOException {
    files.clear();
    StencilSet drawn =
        fault.isOfOpenings() ? other(fault) : form.isWhole() ? wrong(form, fault) : set;
    switch (form) {
      case OWN_PROOF_PAGE -> pdf("proof.pdf", bundle(drawn, labelled(fault)).proofPdf());
      case OWN_CUT_PDF -> ownCutPdf(drawn, fault);
      case OWN_CUT_FILES -> ownCutFiles(drawn, fault, true);
      case OWN_CUT_FILE_OF_ONE_PANEL -> ownCutFiles(drawn, fault, false);
      case WHOLE -> page("whole.svg", size(fault), whole(drawn), 3000, 2400);
      case PANELS_IN_ONE_FILE -> page("panels.svg", size(fault), apart(drawn, fault), 4000, 2600);
      case PANELS_IN_MANY_FILES -> manyFiles(drawn, fault);
      case ONE_PANEL -> page("part.svg", size(fault), one(drawn, panel(0), fault), 3000, 2400);
      case FRAMED_PAGE -> page("page.svg", size(fault), framed(drawn, false), 3000, 2600);
      case FRAMED_PAGE_WITH_WORDS_IN_THE_FILM ->
          page("page.svg", size(fault), framed(drawn, true), 3000, 2600);
      case A4_WITH_SCALE -> a4(drawn, size(fault), "Scale 1:20");
      case A4_WITHOUT_SCALE -> a4(drawn, size(fault), "Sheet 1 of 1");
      case POLYLINE_EXPORT -> page("lines.svg", size(fault), polylines(drawn), 3000, 2400);
      case PNG -> add("screen.png", ReturnedPictures.png(first(drawn), set.blank()));
      case JPEG -> add("photo.jpg", ReturnedPictures.jpeg(first(drawn), set.blank()));
      case SCAN_IN_A_PDF -> add("scan.pdf", ReturnedPictures.scanned(first(drawn), set.blank()));
    }
    return List.copyOf(files);
  }

  private Panel panel(int i) {
    return panels.panels().get(i);
  }

  private StencilSet wrong(Form form, Fault fault) {
    Vec m = set.blank().middle();
    return switch (fault) {
      case MIRRORED, TEN_MM_OFF, TURNED_ONE_DEGREE -> mapped(inSheet(fault, m));
      case TWO_PERCENT_LARGER, HALF_SIZE ->
          form == Form.OWN_PROOF_PAGE
              ? mapped(about(m, Affine.scale(size(fault), size(fault))))
              : set;
      default -> set;
    };
  }

  /** What the fault does to the openings inside their sheet. */
  private static Affine inSheet(Fault fault, Vec middle) {
    return switch (fault) {
      case MIRRORED -> about(middle, Affine.scale(-1, 1));
      case TEN_MM_OFF -> Affine.move(6, 8);
      case TURNED_ONE_DEGREE -> about(middle, Affine.turn(Math.toRadians(1)));
      default -> Affine.IDENTITY;
    };
  }

  /** A panel's openings with the fault, in the blank's frame. */
  private Region open(Stencil stencil, Panel panel, Fault fault) {
    boolean one = fault == Fault.ONE_PANEL_MIRRORED && panel.equals(panel(1));
    Affine map = inSheet(one ? Fault.MIRRORED : fault, panel.box().middle());
    return panel.openings(stencil).map(map).intersect(Region.rectangle(panel.box()));
  }

  private static double size(Fault fault) {
    return fault == Fault.TWO_PERCENT_LARGER ? 1.02 : fault == Fault.HALF_SIZE ? 0.5 : 1;
  }

  private static Affine about(Vec m, Affine what) {
    return Affine.move(-m.x(), -m.y()).then(what).then(Affine.move(m.x(), m.y()));
  }

  private StencilSet mapped(Affine map) {
    Region blank = Region.rectangle(set.blank());
    return with(
        set.stencils().stream().map(s -> with(s, s.openings().map(map).intersect(blank))).toList());
  }

  private StencilSet other(Fault fault) {
    Region blank = Region.rectangle(set.blank());
    return with(
        set.stencils().stream()
            .map(s -> with(s, other(s.openings(), fault).intersect(blank)))
            .toList());
  }

  private Region other(Region open, Fault fault) {
    return switch (fault) {
      case PIECE_MISSING -> open.minus(Region.rectangle(smallest(open)));
      case STRETCHED -> open.map(about(set.blank().middle(), Affine.scale(1.01, 1)));
      case FATTER -> open.offset(2, 0.1);
      case PIECE_ADDED -> open.union(box(1000, 1200, 1050, 1250));
      case COUNTERS_FILLED -> Region.union(open.shells().stream().map(Region::of).toList());
      default -> open;
    };
  }

  private static Bounds smallest(Region openings) {
    return openings.parts().stream()
        .min((a, b) -> Double.compare(a.area(), b.area()))
        .orElseThrow()
        .bounds();
  }

  private StencilSet with(List<Stencil> stencils) {
    return StencilSet.of(set.blank(), set.origin(), stencils, List.of(), List.of());
  }

  private static Stencil with(Stencil s, Region open) {
    return new Stencil(s.layer(), s.colour(), s.artwork(), open, open, s.mask(), s.loosePieces());
  }

  /** Panels with the letters of the first two exchanged, when that is the fault. */
  private PanelPlan labelled(Fault fault) {
    if (fault != Fault.LABELS_SWAPPED) {
      return panels;
    }
    List<Panel> named = new ArrayList<>();
    for (int i = 0; i < panels.panels().size(); i++) {
      named.add(new Panel(name(i, fault), panel(i).box()));
    }
    return new PanelPlan(
        panels.blank(),
        panels.turn(),
        panels.seams(),
        named,
        panels.layingOrder(),
        panels.laps(),
        panels.ticks(),
        panels.rollLength(),
        panels.waste(),
        panels.cost(),
        panels.findings());
  }

  private String name(int i, Fault fault) {
    return panel(fault == Fault.LABELS_SWAPPED && i < 2 ? 1 - i : i).name();
  }

  private ShopBundle bundle(StencilSet drawn, PanelPlan plan) {
    return new ShopBundle(
        new CutFileParameters("Letter", 1),
        drawn,
        plan,
        FilmOrder.onRoll(1219.2),
        UnitSystem.METRIC,
        MADE,
        Words.english()::say);
  }

  private void pdf(String name, PdfFile file) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    file.write(out);
    add(name, out.toByteArray());
  }

  private void add(String name, byte[] content) throws IOException {
    files.add(Files.write(folder.resolve(name), content));
  }

  private List<CutFile> cutFiles(StencilSet drawn, Fault fault) {
    List<CutFile> made = new ArrayList<>();
    double k = size(fault);
    for (CutFile f : new CutFileParameters("Letter", 1).files(drawn, labelled(fault))) {
      boolean second = f.name().endsWith("panel-B");
      if (fault == Fault.PANEL_MISSING && second) {
        continue;
      }
      boolean mirrored = fault == Fault.MIRRORED || (fault == Fault.ONE_PANEL_MIRRORED && second);
      Affine map =
          mirrored ? Affine.scale(-1, 1).then(Affine.move(f.width(), 0)) : Affine.scale(k, k);
      Affine wrong =
          mirrored ? Affine.IDENTITY : inSheet(fault, new Vec(f.width() / 2, f.height() / 2));
      Region open = f.openings().map(wrong).intersect(box(0, 0, f.width(), f.height())).map(map);
      made.add(
          new CutFile(
              f.name(),
              f.title(),
              f.width() * k,
              f.height() * k,
              open,
              open.rings().stream().map(CurvedRing::straight).toList(),
              f.trim().stream().map(l -> l.map(map)).toList(),
              f.weedCuts(),
              f.marks(),
              f.numbers(),
              f.label()));
    }
    return made;
  }

  private void ownCutPdf(StencilSet drawn, Fault fault) throws IOException {
    pdf("cut.pdf", CutFile.pdf("Letter", MADE, cutFiles(drawn, fault), Words.english()::say));
  }

  private void ownCutFiles(StencilSet drawn, Fault fault, boolean all) throws IOException {
    for (CutFile f : cutFiles(drawn, fault)) {
      if (all || f.name().endsWith("stencil-1_panel-A")) {
        add(f.name() + ".svg", f.svg(Words.english()::say).getBytes(StandardCharsets.UTF_8));
      }
    }
  }

  private static String path(List<Ring> rings, Affine where, String style) {
    StringBuilder d = new StringBuilder("<path " + style + " d=\"");
    for (Ring ring : rings) {
      String command = "M";
      for (Vec p : ring.map(where).points()) {
        d.append(String.format(Locale.ROOT, "%s%.4f %.4f", command, p.x(), p.y()));
        command = "L";
      }
      d.append('Z');
    }
    return d.append("\"/>\n").toString();
  }

  private static String edge(Bounds b, Affine where) {
    return path(List.of(Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY())), where, LINE);
  }

  private static String text(double x, double y, double size, String words) {
    return String.format(
        Locale.ROOT,
        "<text x=\"%.3f\" y=\"%.3f\" font-size=\"%.3f\" font-family=\"DejaVu Sans\">%s</text>\n",
        x,
        y,
        size,
        words);
  }

  private String whole(StencilSet drawn) {
    Affine where = Affine.move(100, 100);
    return edge(set.blank(), where)
        + path(drawn.stencils().get(0).openings().rings(), where, SHADE);
  }

  private static Region first(StencilSet drawn) {
    return drawn.stencils().get(0).openings();
  }

  /** Every outline as a hairline of many points that ends a hundredth off its start. */
  private String polylines(StencilSet drawn) {
    StringBuilder all = new StringBuilder(edge(set.blank(), Affine.move(100, 100)));
    for (Ring ring : first(drawn).map(Affine.move(100, 100)).rings()) {
      all.append("<polyline ").append(LINE).append(" points=\"");
      for (Vec p : ring.points()) {
        all.append(String.format(Locale.ROOT, "%.4f,%.4f ", p.x(), p.y()));
      }
      Vec start = ring.points().get(0);
      all.append(String.format(Locale.ROOT, "%.4f,%.4f\"/>%n", start.x() + 0.01, start.y()));
    }
    return all.toString();
  }

  private String one(StencilSet drawn, Panel panel, Fault fault) {
    Affine where = Affine.move(100 - panel.box().minX(), 100);
    Region open = open(drawn.stencils().get(0), panel, fault);
    return edge(panel.box(), where) + path(open.rings(), where, SHADE);
  }

  private String panelDrawn(StencilSet drawn, Fault fault, int i, Affine where) {
    Panel panel = panel(i);
    Region open = open(drawn.stencils().get(0), panel, fault);
    return edge(panel.box(), where) + path(open.rings(), where, SHADE);
  }

  private String apart(StencilSet drawn, Fault fault) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < 3; i++) {
      if (fault == Fault.PANEL_MISSING && i == 1) {
        continue;
      }
      Affine where = Affine.move(100 + 250 * i, 100 + 90 * i);
      all.append(panelDrawn(drawn, fault, i, where));
      Vec at = where.apply(new Vec(panel(i).box().minX() + 60, set.blank().maxY() - 10));
      all.append(text(at.x(), at.y(), 30, name(i, fault)));
    }
    return all.toString();
  }

  private void manyFiles(StencilSet drawn, Fault fault) throws IOException {
    for (int i = 0; i < 3; i++) {
      if (fault == Fault.PANEL_MISSING && i == 1) {
        continue;
      }
      Affine where = Affine.move(50 - panel(i).box().minX(), 50);
      page(
          "shop panel " + name(i, fault) + ".svg",
          size(fault),
          panelDrawn(drawn, fault, i, where),
          1500,
          2400);
    }
  }

  private String framed(StencilSet drawn, boolean inside) {
    String page =
        whole(drawn)
            + edge(new Bounds(20, 20, 2980, 2580), Affine.IDENTITY)
            + edge(new Bounds(2100, 2300, 2980, 2580), Affine.IDENTITY)
            + text(2120, 2380, 60, "Quayside Signs (invented)")
            + text(2120, 2480, 60, "job 17, vinyl 1 of 1");
    return inside ? page + text(700, 1750, 40, "cut side up") : page;
  }

  private void a4(StencilSet drawn, double size, String note) throws IOException {
    double k = 0.05 * size;
    String body =
        edge(new Bounds(5, 5, 292, 205), Affine.IDENTITY)
            + "<g transform=\"translate(10 10) scale("
            + k
            + ")\">"
            + whole(drawn)
            + "</g>"
            + text(200, 180, 5, note)
            + text(200, 190, 5, "Quayside Signs (invented)");
    page("a4.svg", 1, body, 297, 210);
  }

  private void page(String name, double size, String body, double width, double height)
      throws IOException {
    add(
        name,
        String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.3fmm\" height=\"%2$.3fmm\""
                    + " viewBox=\"0 0 %3$.3f %4$.3f\">%5$s</svg>",
                width * size,
                height * size,
                width,
                height,
                body)
            .getBytes(StandardCharsets.UTF_8));
  }
}
