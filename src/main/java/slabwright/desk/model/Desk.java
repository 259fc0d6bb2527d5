package slabwright.desk.model;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slabwright.site.Site;
import slabwright.site.edit.Edit;
import slabwright.site.edit.History;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/**
 * The open site. {@link #push} is the one door through which it changes; undo and redo walk along
 * its history. A preview is what the site would be while something is dragged; it is never kept.
 */
public final class Desk {
  private final Signal changed = new Signal();
  private final Signal walked = new Signal();
  private final AsideSteps asides = new AsideSteps();
  private History history = History.of(Site.empty("", UnitSystem.FEET_INCHES));
  private Optional<Site> preview = Optional.empty();
  private Optional<Path> file = Optional.empty();
  private Optional<Refusal> refusal = Optional.empty();
  private Optional<Message> news = Optional.empty();
  private Optional<Path> newsFolder = Optional.empty();
  private List<Choice> choices = List.of();
  private boolean open;
  private int opening;

  /** Given after every change of what is shown, previews included. */
  public Signal changed() {
    return changed;
  }

  /** Given after every change of the site itself: an edit, undo, redo or another site. */
  public Signal siteChanged() {
    return walked;
  }

  /** Opens a site in place of the one that was open. */
  public void open(Site site, Optional<Path> from) {
    open(History.of(site), from);
  }

  /** Opens a site with its past. */
  public void open(History past, Optional<Path> from) {
    file = from;
    open = true;
    opening++;
    asides.clear();
    refusal = Optional.empty();
    news = Optional.empty();
    set(past, true);
  }

  /** Puts the site away; the start screen shows. */
  public void close() {
    open = false;
    opening++;
    asides.clear();
    file = Optional.empty();
    set(History.of(Site.empty("", UnitSystem.FEET_INCHES)), true);
  }

  public boolean isOpen() {
    return open;
  }

  /** Grows whenever another site is opened; what was worked out before is of another plan. */
  public int opening() {
    return opening;
  }

  public Optional<Path> file() {
    return file;
  }

  /** The site as it is now, without preview. */
  public Site site() {
    return history.now();
  }

  /** The site as it is drawn: the preview while there is one. */
  public Site shown() {
    return preview.orElse(history.now());
  }

  public History history() {
    return history;
  }

  /** Why the last edit was refused; empty once another one went through. */
  public Optional<Refusal> refusal() {
    return refusal;
  }

  /** What was last done on request and can't be seen on the slab; empty once something else is. */
  public Optional<Message> announcement() {
    return news;
  }

  /** Says that something asked for has been done. */
  public void announce(Message what) {
    announce(what, Optional.empty());
  }

  /** Says that something has been done, and the folder that its files lie in. */
  public void announce(Message what, Optional<Path> folder) {
    refusal = Optional.empty();
    news = Optional.of(what);
    newsFolder = folder;
    changed.fire();
  }

  /** The folder of what was last done, while that is told. */
  public Optional<Path> announcedFolder() {
    return news.flatMap(n -> newsFolder);
  }

  /** Changes the site, or leaves it and keeps the refusal. */
  public Result<Site> push(Edit edit) {
    preview = Optional.empty();
    Result<Site> outcome = edit.apply(site());
    if (outcome instanceof Result.Ok<Site> done) {
      refusal = Optional.empty();
      news = Optional.empty();
      boolean same = done.value().equals(site());
      if (!same) {
        asides.forgetUndone();
      }
      set(same ? history : history.push(edit.name(), done.value()), !same);
    } else {
      refuse(((Result.Refused<Site>) outcome).refusals().get(0));
    }
    return outcome;
  }

  /**
   * Shows what an edit would give. The rules are asked only when it is pushed, so that dragging
   * stays quick.
   */
  public void preview(Edit edit) {
    preview = edit.change(site());
    changed.fire();
  }

  /** Whether something is being dragged or typed that the site does not have yet. */
  public boolean isPreviewing() {
    return preview.isPresent();
  }

  public void endPreview() {
    if (preview.isPresent()) {
      preview = Optional.empty();
      changed.fire();
    }
  }

  /** Says why something can't be. */
  public void refuse(Message why) {
    refuse(Refusal.of(why));
  }

  /** Says why something can't be, and where. */
  public void refuse(Refusal why) {
    refusal = Optional.of(why);
    choices = List.of();
    news = Optional.empty();
    changed.fire();
  }

  /** What was done is old news. */
  public void clearAnnouncement() {
    if (news.isPresent()) {
      news = Optional.empty();
      changed.fire();
    }
  }

  /**
   * One of the things that can be done about a refusal.
   *
   * @param words of its button
   */
  public record Choice(Message words, Runnable take) {}

  /** Says why something can't be, and what the person may do instead. */
  public void ask(Message why, List<Choice> instead) {
    choices = List.copyOf(instead);
    refusal = Optional.of(Refusal.of(why));
    news = Optional.empty();
    changed.fire();
  }

  /** What may be done about the refusal; often nothing is offered. */
  public List<Choice> choices() {
    return refusal.isPresent() ? choices : List.of();
  }

  /** Puts what was said away. */
  public void clearRefusal() {
    refusal = Optional.empty();
    news = Optional.empty();
    changed.fire();
  }

  /**
   * Something beside the plan was changed, and is to be undone like an edit of it.
   *
   * @param back makes it as it was
   * @param again makes it as it is now
   */
  public void changedBeside(Message name, Runnable back, Runnable again) {
    asides.add(history, name, back, again);
    changed.fire();
  }

  /** What undo would take back; empty when there is nothing. */
  public Optional<Message> undoName() {
    return asides.undoName(history).or(history::undoName);
  }

  /** What redo would do again; empty when there is nothing. */
  public Optional<Message> redoName() {
    return asides.redoName(history).or(history::redoName);
  }

  public void undo() {
    boolean beside = asides.undo(history);
    set(beside ? history : history.undo(), !beside && history.canUndo());
  }

  public void redo() {
    boolean beside = asides.redo(history);
    set(beside ? history : history.redo(), !beside && history.canRedo());
  }

  /** Records that a state of what is open lies in the file. */
  public void savedTo(Path path, int position, Site site) {
    file = Optional.of(path);
    history = history.markSaved(position, site);
    changed.fire();
  }

  private void set(History next, boolean moved) {
    preview = Optional.empty();
    history = next;
    if (moved) {
      walked.fire();
    }
    changed.fire();
  }
}
