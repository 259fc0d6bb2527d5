package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.units.Message;
import slabwright.units.PartFaults;

/**
 * Papers of which a page could not be made by a fault of the program: a page in its place says so,
 * and so does one before all others, so that nobody takes what isn't there for an all-clear.
 *
 * @param faults told what broke
 */
public record MissingPages(PartFaults faults) {
  /**
   * Pages of one title, or the one that says that they are missing.
   *
   * @param area name of the floor area; empty when the pages speak of the whole site
   * @param safety whether somebody may come to harm for want of them
   */
  public List<PageDraft> or(
      SheetContext context,
      Message title,
      String area,
      boolean safety,
      Supplier<List<PageDraft>> pages) {
    return or(title, area, safety, pages, () -> List.of(missing(context, title, area)));
  }

  /** What is made of pages, or what stands in its place. */
  public <T> T or(
      Message title, String area, boolean safety, Supplier<T> pages, Supplier<T> otherwise) {
    return faults.make(named(title, area), safety, pages, otherwise);
  }

  /** A page by its title, and the floor area that it is of. */
  private static Message named(Message title, String area) {
    return area.isEmpty() ? title : Message.of("sheets.missing-pages.page-of", title, area);
  }

  /** The page that stands in the place of one. */
  public static PageDraft missing(SheetContext context, Message title, String area) {
    PageDraft draft =
        new PageDraft(
            context.say(title),
            context.say("sheets.missing-pages.missing"),
            area,
            Optional.empty(),
            List.of());
    Block stop =
        CautionBlock.stop(
            context.say("sheets.missing-pages.missing"),
            context.say("sheets.missing-pages.no-all-clear"));
    return ColumnPages.of(context, draft, List.of(stop)).get(0);
  }

  /**
   * What stands before all other pages: what is missing; nothing when nothing is.
   *
   * @param also what is told on it besides, as it may have stood on a page that is missing
   */
  public static List<PageDraft> notice(
      SheetContext context, List<PartFaults.PartFault> missing, List<Block> also) {
    if (missing.isEmpty()) {
      return List.of();
    }
    PageDraft draft =
        new PageDraft(
            context.say("sheets.missing-pages.title"),
            context.say("sheets.missing-pages.subtitle"),
            "",
            Optional.empty(),
            List.of());
    List<PartFaults.PartFault> safety =
        missing.stream().filter(PartFaults.PartFault::safety).toList();
    List<PartFaults.PartFault> others = missing.stream().filter(f -> !f.safety()).toList();
    List<Block> blocks = new ArrayList<>();
    if (!safety.isEmpty()) {
      blocks.add(
          CautionBlock.stop(
              context.say("sheets.missing-pages.safety-head"),
              context.say("sheets.missing-pages.safety")));
      blocks.add(new BulletBlock(said(context, safety)));
      blocks.add(new Gap(4));
    }
    if (!others.isEmpty()) {
      blocks.add(
          CautionBlock.stop(
              context.say("sheets.missing-pages.missing"),
              context.say("sheets.missing-pages.no-all-clear")));
      blocks.add(new BulletBlock(said(context, others)));
    }
    blocks.add(new Gap(4));
    blocks.addAll(also);
    return ColumnPages.of(context, draft, blocks);
  }

  private static List<String> said(SheetContext context, List<PartFaults.PartFault> faults) {
    return faults.stream()
        .map(f -> context.say("sheets.missing-pages.page-and-why", f.part(), f.why()))
        .toList();
  }
}
