package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.shape.Bounds;

/**
 * Pages whose text stands in columns: beside a drawing first, where there is one, then on further
 * pages in as many columns of the same width as fit.
 */
public final class ColumnLayout implements ColumnFlow.ColumnSource {
  /** Type sizes tried in turn before a column goes on on a further page. */
  private static final double[] TIGHTER = {1, 0.93, 0.86, 0.8};

  /** Of a page's height: what is no page of its own. */
  private static final double FEW_LINES = 0.12;

  private final PageFrame page;
  private final boolean beside;
  private final int perPage;
  private final List<List<Ink>> pages = new ArrayList<>();
  private int given;

  /** Where the first page's columns begin, with the page given; 0 where they begin anew. */
  private double begun;

  private ColumnLayout(PageFrame page, boolean beside, int perPage) {
    this.page = page;
    this.beside = beside;
    this.perPage = perPage;
  }

  /** Blocks beside a drawing; the first list of inks belongs on the drawing's own page. */
  public static List<List<Ink>> beside(PageFrame page, List<? extends Block> blocks) {
    double side = page.side().width();
    int n = (int) Math.max(1, Math.floor((page.body().width() + 12) / (side + 12)));
    for (double tight : TIGHTER) {
      TypeSizes type = page.type().tighter(tight);
      List<List<Ink>> pages = set(new ColumnLayout(page, true, n), type, blocks);
      if (pages.size() == 1) {
        return pages;
      }
    }
    return set(new ColumnLayout(page, true, n), page.type(), blocks);
  }

  /** Blocks in one column of their own; empty where they do not all fit. */
  public static Optional<List<Ink>> within(
      Bounds column, TypeSizes type, List<? extends Block> blocks) {
    List<Ink> inks = new ArrayList<>();
    int[] asked = {0};
    new ColumnFlow(
            type,
            new ColumnFlow.ColumnSource() {
              @Override
              public Bounds next() {
                asked[0]++;
                return column;
              }

              @Override
              public double whole() {
                return column.height();
              }

              @Override
              public void add(List<Ink> more) {
                inks.addAll(more);
              }
            })
        .set(blocks);
    boolean fits = inks.stream().allMatch(i -> i.reach().maxY() <= column.maxY());
    return asked[0] == 1 && fits ? Optional.of(inks) : Optional.empty();
  }

  /** Blocks on pages of so many columns. */
  public static List<List<Ink>> whole(PageFrame page, int columns, List<? extends Block> blocks) {
    return set(new ColumnLayout(page, false, columns), page.type(), blocks);
  }

  /** The same in one column, its lines a little closer where that saves a page of a few lines. */
  public static List<List<Ink>> saving(PageFrame page, List<? extends Block> blocks) {
    List<List<Ink>> pages = whole(page, 1, blocks);
    double foot =
        pages.get(pages.size() - 1).stream().mapToDouble(i -> i.reach().maxY()).max().orElse(0);
    if (pages.size() == 1 || foot - page.body().minY() > FEW_LINES * page.body().height()) {
      return pages;
    }
    List<List<Ink>> closer = set(new ColumnLayout(page, false, 1), page.type().closer(), blocks);
    return closer.size() < pages.size() ? closer : pages;
  }

  private static List<List<Ink>> set(
      ColumnLayout columns, TypeSizes type, List<? extends Block> blocks) {
    new ColumnFlow(type, columns).set(blocks);
    return columns.pages;
  }

  /**
   * Blocks over the whole width, and under them others in columns: on the same page where there is
   * room for a few lines.
   *
   * @param gap between the two, mm
   * @param least height of columns worth beginning, mm
   */
  public static List<List<Ink>> wideThenColumns(
      PageFrame page,
      List<? extends Block> wide,
      int columns,
      List<? extends Block> under,
      double gap,
      double least) {
    List<List<Ink>> pages = whole(page, 1, wide);
    List<Ink> last = pages.get(pages.size() - 1);
    double foot = last.stream().mapToDouble(i -> i.reach().maxY()).max().orElse(0) + gap;
    ColumnLayout rest = new ColumnLayout(page, false, columns);
    if (page.body().maxY() - foot >= least) {
      rest.pages.add(new ArrayList<>());
      rest.begun = foot;
    }
    List<List<Ink>> more = set(rest, page.type(), under);
    List<List<Ink>> all = new ArrayList<>(pages);
    if (rest.begun > 0) {
      last.addAll(more.get(0));
    }
    all.addAll(more.subList(rest.begun > 0 ? 1 : 0, more.size()));
    return all;
  }

  @Override
  public Bounds next() {
    int i = given++;
    if (begun > 0 && i < perPage) {
      Bounds c = page.column(i, perPage);
      return new Bounds(c.minX(), begun, c.maxX(), c.maxY());
    }
    if (beside && i == 0) {
      pages.add(new ArrayList<>());
      return page.side();
    }
    int at = (beside ? i - 1 : i) % perPage;
    if (at == 0) {
      pages.add(new ArrayList<>());
    }
    return beside ? sideWide(at) : page.column(at, perPage);
  }

  @Override
  public double whole() {
    return beside && given <= 1 ? page.side().height() : page.body().height();
  }

  /** A column as wide as the one beside the drawing. */
  private Bounds sideWide(int at) {
    Bounds b = page.body();
    double side = page.side().width();
    double gap = perPage == 1 ? 0 : (b.width() - perPage * side) / (perPage - 1);
    double x = b.minX() + at * (side + gap);
    return new Bounds(x, b.minY(), x + side, b.maxY());
  }

  @Override
  public void add(List<Ink> inks) {
    pages.get(pages.size() - 1).addAll(inks);
  }
}
