package slabwright.site.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.site.Site;
import slabwright.units.Message;

/**
 * Every state of a site since it was opened, and where we are. Immutable.
 *
 * @param sites states, the first as opened
 * @param names what led to each state; the first is empty
 * @param position index of the current state
 * @param saved index of the state on disk; −1 when that state is gone
 */
public record History(List<Site> sites, List<Optional<Message>> names, int position, int saved) {
  public History {
    sites = List.copyOf(sites);
    names = List.copyOf(names);
  }

  public static History of(Site opened) {
    return new History(List.of(opened), List.of(Optional.empty()), 0, 0);
  }

  public Site now() {
    return sites.get(position);
  }

  /** The history with a next state; what had been undone is dropped. */
  public History push(Message name, Site next) {
    List<Site> kept = new ArrayList<>(sites.subList(0, position + 1));
    List<Optional<Message>> keptNames = new ArrayList<>(names.subList(0, position + 1));
    kept.add(next);
    keptNames.add(Optional.of(name));
    return new History(kept, keptNames, position + 1, saved > position ? -1 : saved);
  }

  public boolean canUndo() {
    return position > 0;
  }

  public boolean canRedo() {
    return position + 1 < sites.size();
  }

  public History undo() {
    return canUndo() ? new History(sites, names, position - 1, saved) : this;
  }

  public History redo() {
    return canRedo() ? new History(sites, names, position + 1, saved) : this;
  }

  /** What undo would take back; empty when there is nothing. */
  public Optional<Message> undoName() {
    return canUndo() ? names.get(position) : Optional.empty();
  }

  public Optional<Message> redoName() {
    return canRedo() ? names.get(position + 1) : Optional.empty();
  }

  public History markSaved() {
    return new History(sites, names, position, position);
  }

  /** Marks an earlier state, where it is still the one at that index. */
  public History markSaved(int index, Site site) {
    return index < sites.size() && sites.get(index).equals(site)
        ? new History(sites, names, position, index)
        : this;
  }

  public boolean isSaved() {
    return position == saved;
  }
}
