package slabwright.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.book.BookFault;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookText;
import slabwright.work.handover.Handovers;
import slabwright.work.handover.Scope;

/** A shop book; one that is taken is worked with. */
final class BookTarget implements FuzzTarget {
  private final Site site = WorkSamples.tramHall();
  private final String book = BookSamples.text().text();

  @Override
  public byte[] input(Random random) {
    return new TextMutator(random, List.of()).spoil(book).getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public List<Message> read(byte[] input) {
    Result<ShopBookText> text = ShopBookText.parse(new String(input, StandardCharsets.UTF_8));
    if (text instanceof Result.Refused<ShopBookText> bad) {
      return bad.refusals().stream().map(Refusal::message).toList();
    }
    ShopBook read = ShopBook.of(text.orThrow());
    WorkPlan plan = WorkSamples.planSmall(site, read);
    if (Scope.of(plan).cost().lines().isEmpty()
        || Handovers.of(plan).loadList().sections().isEmpty()) {
      throw new IllegalStateException("no cost or nothing to load");
    }
    return read.faults().stream().map(BookFault::said).toList();
  }
}
