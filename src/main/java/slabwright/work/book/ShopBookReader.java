package slabwright.work.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.work.air.Solvent;
import slabwright.work.air.SolventShare;

/** Turns the text of a shop book into typed values; one use. */
final class ShopBookReader {
  private static final List<String> KINDS =
      List.of(
          "book",
          "crew",
          "set-up",
          "prep",
          "inlay",
          "consumables",
          "grit",
          "tool",
          "product",
          "solvent");

  private final List<BookFault> faults;
  private final List<BookSection> sections = new ArrayList<>();
  private final Map<String, Solvent> solvents = new LinkedHashMap<>();
  private final ShopBookText text;

  ShopBookReader(ShopBookText text) {
    this.text = text;
    this.faults = new ArrayList<>(text.faults());
  }

  ShopBook read() {
    nameUnknownSections();
    solvents.put("acetone", Solvent.ACETONE);
    all("solvent").forEach(s -> SolventReader.read(s).ifPresent(x -> solvents.put(x.name(), x)));
    BookSection book = one("book");
    ShopBook read =
        new ShopBook(
            book.text("name").maybe(),
            book.yes("invented").maybe().orElse(false),
            book.text("currency").maybe().orElse(""),
            Crew.read(one("crew")),
            PrepRates.read(one("prep")),
            InlayRates.read(one("inlay")),
            SetUpTimes.read(one("set-up")),
            ConsumablePrices.read(one("consumables")),
            all("grit").stream().map(GritRate::read).toList(),
            all("tool").stream().map(ShopTool::read).toList(),
            all("product").stream().map(this::product).toList(),
            List.of());
    sections.forEach(BookSection::nameUnknownKeys);
    return withFaults(read);
  }

  /** The sections as read, in the order of the book's kinds. */
  List<BookSection> sections() {
    return sections.stream().sorted(Comparator.comparing(s -> KINDS.indexOf(s.kind()))).toList();
  }

  private ShopBook withFaults(ShopBook b) {
    return b.withFaults(faults.stream().sorted(Comparator.comparing(BookFault::line)).toList());
  }

  private Product product(BookSection s) {
    String label = s.text("label").maybe().orElse(s.name());
    Figure<ProductKind> kind =
        s.word("kind", BookSection.example("sealer")).flatMap(ShopBookReader::kind);
    boolean tints = kind.maybe().filter(ProductKind.BASE_DYE::equals).isPresent();
    return new Product(
        s.name(),
        label,
        kind,
        ProductCoverage.read(s),
        Mixing.read(s, kind.maybe().filter(ProductKind.FILLER::equals).isPresent()),
        Laying.read(s),
        Drying.read(s),
        ProductSuitability.read(s),
        s.list("solvents", Message.of("work.shop-book-reader.acetone-or-none"), this::share),
        tints
            ? s.colour("colour")
            : Figure.missing(Message.of("work.book-section.of", "colour", s.label())));
  }

  private static Figure<ProductKind> kind(String word) {
    return ProductKind.named(word)
        .map(Figure::known)
        .orElse(Figure.refused(Message.of("work.shop-book-reader.is-no-kind-of-product", word)));
  }

  /** Reads {@code acetone 85 %}. */
  private Result<SolventShare> share(String text) {
    int gap = text.indexOf(' ');
    String name = gap < 0 ? text : text.substring(0, gap);
    Optional<Solvent> solvent = Optional.ofNullable(solvents.get(name));
    if (solvent.isEmpty()) {
      return Result.refused(Message.of("work.shop-book-reader.there-is-no-complete-solvent", name));
    }
    String rest = gap < 0 ? "" : text.substring(gap).strip();
    return rest.equals("100 %")
        ? Result.ok(new SolventShare(solvent.get(), 1))
        : BookDimension.SHARE.read(rest).map(x -> new SolventShare(solvent.get(), x));
  }

  private BookSection one(String kind) {
    return all(kind).stream().findFirst().orElseGet(() -> section(kind, "", List.of()));
  }

  private List<BookSection> all(String kind) {
    Map<String, List<ShopBookText.Entry>> byName = new LinkedHashMap<>();
    text.entries().stream()
        .filter(e -> e.kind().equals(kind))
        .forEach(e -> byName.computeIfAbsent(e.name(), n -> new ArrayList<>()).add(e));
    List<BookSection> found = new ArrayList<>();
    byName.forEach((name, entries) -> found.add(section(kind, name, entries)));
    return found;
  }

  private BookSection section(String kind, String name, List<ShopBookText.Entry> entries) {
    Map<String, ShopBookText.Entry> byKey = new LinkedHashMap<>();
    entries.forEach(e -> put(byKey, e));
    BookSection s = new BookSection(kind, name, byKey, faults);
    sections.add(s);
    return s;
  }

  private void put(Map<String, ShopBookText.Entry> byKey, ShopBookText.Entry e) {
    if (byKey.put(e.key(), e) != null) {
      faults.add(
          new BookFault(
              e.line(), Message.of("work.shop-book-reader.is-given-twice-the-last", e.key())));
    }
  }

  private void nameUnknownSections() {
    text.entries().stream()
        .filter(e -> !KINDS.contains(e.kind()))
        .map(
            e ->
                new BookFault(
                    e.line(),
                    Message.of("work.shop-book-reader.the-section-is-not-known", e.kind())))
        .forEach(faults::add);
  }
}
