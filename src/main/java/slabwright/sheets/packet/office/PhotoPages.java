package slabwright.sheets.packet.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.PrintedPhoto;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.job.PinnedPhoto;
import slabwright.tape.CornerName;

/** The photos of the site's places, two in a row; before and after stand side by side. */
record PhotoPages(PacketContents job, SheetContext context) {
  List<PageDraft> drafts() {
    if (job.photos().isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    for (FloorArea area : job.site().areas()) {
      List<PrintedPhoto> here =
          job.photos().stream().filter(p -> p.pinned().area().equals(area.id())).toList();
      if (!here.isEmpty()) {
        blocks.add(new Heading(area.name()));
        rows(here).forEach(r -> blocks.add(new PhotoRow(r.stream().map(this::cell).toList())));
      }
    }
    PageDraft page =
        new PageDraft(
            context.say("sheets.photo-pages.title"),
            context.say("sheets.photo-pages.says"),
            "",
            Optional.empty(),
            List.of());
    return blocks.isEmpty() ? List.of() : ColumnPages.of(context, page, blocks);
  }

  /** Pairs of one place first, before beside after; then the others, two by two. */
  private static List<List<PrintedPhoto>> rows(List<PrintedPhoto> photos) {
    List<List<PrintedPhoto>> rows = new ArrayList<>();
    List<PrintedPhoto> rest = new ArrayList<>(photos);
    for (PrintedPhoto before : photos) {
      Optional<PrintedPhoto> after =
          rest.stream()
              .filter(p -> is(before, PinnedPhoto.Phase.BEFORE) && is(p, PinnedPhoto.Phase.AFTER))
              .filter(p -> p.pinned().pin().equals(before.pinned().pin()))
              .findFirst();
      if (after.isPresent()) {
        rows.add(List.of(before, after.get()));
        rest.remove(before);
        rest.remove(after.get());
      }
    }
    for (int i = 0; i < rest.size(); i += 2) {
      rows.add(List.copyOf(rest.subList(i, Math.min(i + 2, rest.size()))));
    }
    return rows;
  }

  private static boolean is(PrintedPhoto p, PinnedPhoto.Phase phase) {
    return p.pinned().phase().filter(phase::equals).isPresent();
  }

  private PhotoRow.Cell cell(PrintedPhoto p) {
    List<String> said = new ArrayList<>();
    said.add(place(p.pinned()));
    p.pinned().phase().ifPresent(f -> said.add(phase(f)));
    p.pinned().on().ifPresent(d -> said.add(context.times().day(d.atStartOfDay(), true)));
    if (!p.pinned().note().isBlank()) {
      said.add(p.pinned().note());
    }
    return new PhotoRow.Cell(
        p.pixels(),
        String.join(" · ", said),
        context.say("sheets.photo-pages.gone", p.pinned().file()));
  }

  private String phase(PinnedPhoto.Phase phase) {
    return phase == PinnedPhoto.Phase.BEFORE
        ? context.say("sheets.photo-pages.before")
        : context.say("sheets.photo-pages.after");
  }

  private String place(PinnedPhoto p) {
    if (p.pin() instanceof PinnedPhoto.OnMark m) {
      return job.site()
          .area(p.area())
          .flatMap(a -> a.mark(m.mark()))
          .map(Mark::name)
          .filter(n -> !n.isBlank())
          .orElse(context.say("sheets.photo-pages.mark-gone", m.mark()));
    }
    return context.say(
        "sheets.photo-pages.corner", CornerName.of(((PinnedPhoto.OnCorner) p.pin()).corner()));
  }
}
