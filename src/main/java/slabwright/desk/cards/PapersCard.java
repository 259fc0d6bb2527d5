package slabwright.desk.cards;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import slabwright.desk.model.DeskContext;
import slabwright.desk.shell.Controls;
import slabwright.site.JobDetails;
import slabwright.site.edit.SiteEdit;
import slabwright.site.job.JobCrew;
import slabwright.site.job.Party;
import slabwright.units.Message;

/** Whose names stand on every paper, and the language that the crew reads. */
public final class PapersCard extends Card {
  /** A plan names the crew's language by a tag; empty is that of the other papers. */
  private static final List<String> LANGUAGES = List.of("", "en", "es");

  private final DeskContext bench;
  private final FieldRows rows;

  /**
   * The card.
   *
   * @param mark asks for the picture of the contractor's mark
   */
  public PapersCard(DeskContext bench, Runnable mark) {
    super(bench, "papers", bench.words().say("desk.cards.papers.title"));
    this.bench = bench;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
    heading(words().say("desk.cards.papers.contractor"));
    party("contractor", () -> job().contractor(), this::setContractor);
    mark(mark);
    heading(words().say("desk.cards.papers.client"));
    party("client", () -> job().client(), this::setClient);
    heading(words().say("desk.cards.papers.crew"));
    rows.choice(
            words().say("desk.cards.papers.crew-reads"),
            LANGUAGES,
            this::language,
            () -> job().crew().language(),
            this::setLanguage)
        .setId("crew-language");
    rows.sentence(() -> words().say("desk.cards.papers.hint"), "card-hint");
  }

  private JobDetails job() {
    return bench.desk().site().job();
  }

  private void heading(String text) {
    rows.getChildren().add(Controls.label(text, "card-part"));
  }

  private void party(String who, Supplier<Party> now, Consumer<Party> set) {
    line(
        who + "-name",
        words().say("desk.cards.papers.name"),
        now,
        Party::name,
        set,
        Party::withName);
    line(
        who + "-contact",
        words().say("desk.cards.papers.contact"),
        now,
        Party::contact,
        set,
        Party::withContact);
    line(
        who + "-phone",
        words().say("desk.cards.papers.phone"),
        now,
        Party::phone,
        set,
        Party::withPhone);
    line(
        who + "-mail",
        words().say("desk.cards.papers.mail"),
        now,
        Party::mail,
        set,
        Party::withMail);
    line(
        who + "-address",
        words().say("desk.cards.papers.address"),
        now,
        p -> p.address().replaceAll("\\s*\n\\s*", "; "),
        set,
        (p, v) -> p.withAddress(v.replaceAll("\\s*;\\s*", "\n")));
  }

  private void mark(Runnable choose) {
    rows.figure(
            words().say("desk.cards.papers.mark"),
            () ->
                job()
                    .contractor()
                    .mark()
                    .map(m -> words().say("desk.cards.papers.mark-is", m.width(), m.height()))
                    .orElse(words().say("desk.cards.papers.no-mark")))
        .setId("contractor-mark");
    var set = Controls.button(words().say("desk.cards.papers.choose-mark"), "link", choose);
    set.setId("contractor-mark-choose");
    var away =
        Controls.button(
            words().say("desk.cards.papers.mark-away"),
            "link",
            () -> setContractor(job().contractor().withMark(Optional.empty())));
    away.setId("contractor-mark-away");
    rows.getChildren().addAll(set, away);
  }

  private void line(
      String id,
      String name,
      Supplier<Party> now,
      Function<Party, String> get,
      Consumer<Party> set,
      BiFunction<Party, String, Party> with) {
    rows.freeText(name, () -> get.apply(now.get()), v -> set.accept(with.apply(now.get(), v)))
        .line()
        .id(id);
  }

  private void setContractor(Party to) {
    if (push(Message.of("desk.cards.papers.change-contractor"), job().withContractor(to))) {
      bench.settings().setContractor(to);
    }
  }

  private void setClient(Party to) {
    push(Message.of("desk.cards.papers.change-client"), job().withClient(to));
  }

  private void setLanguage(String tag) {
    JobCrew crew = job().crew();
    JobCrew to = new JobCrew(tag, crew.persons(), crew.tools());
    push(Message.of("desk.cards.papers.change-crew-language"), job().withCrew(to));
  }

  /** Whether the plan took it. */
  private boolean push(Message step, JobDetails to) {
    return bench.desk().push(new SiteEdit.SetJob(step, to)).isOk();
  }

  private String language(String tag) {
    Locale reader = words().locale();
    return tag.isEmpty()
        ? words().say("desk.cards.papers.as-other-papers")
        : Locale.forLanguageTag(tag).getDisplayLanguage(reader);
  }

  @Override
  protected void refresh() {
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return true;
  }
}
