package slabwright.work.book;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;

/**
 * The shop book read.
 *
 * @param name as the book calls itself
 * @param invented whether its numbers are made up; every sheet that uses them says so
 * @param currency for prices
 * @param setUp what a crew does besides the steps
 * @param faults unknown keys and values that could not be read
 */
@RecordBuilder
public record ShopBook(
    Optional<String> name,
    boolean invented,
    String currency,
    Crew crew,
    PrepRates prep,
    InlayRates inlay,
    SetUpTimes setUp,
    ConsumablePrices consumables,
    List<GritRate> grits,
    List<ShopTool> tools,
    List<Product> products,
    List<BookFault> faults)
    implements ShopBookBuilder.With {
  public ShopBook {
    grits = List.copyOf(grits);
    tools = List.copyOf(tools);
    products = List.copyOf(products);
    faults = List.copyOf(faults);
  }

  public static ShopBook of(ShopBookText text) {
    return new ShopBookReader(text).read();
  }

  /** The same book for a job with so many people. */
  public ShopBook withPeople(int people) {
    return withCrew(crew.withPeople(Figure.known(people)));
  }

  /** The first product of a kind. */
  public Optional<Product> first(ProductKind kind) {
    return products.stream().filter(p -> p.is(kind)).findFirst();
  }

  /** What a sheet has to say about where its rates come from. */
  public Message origin() {
    Object called = name.isPresent() ? name.get() : Message.of("work.shop-book.without-a-name");
    return invented
        ? Message.of("work.shop-book.rates-coverages-times-and-prices", called)
        : Message.of("work.shop-book.rates-coverages-times-and-prices-2", called);
  }
}
