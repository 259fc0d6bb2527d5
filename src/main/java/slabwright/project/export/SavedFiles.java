package slabwright.project.export;

import java.nio.file.Path;
import java.util.List;
import slabwright.units.Message;
import slabwright.units.PartFaults;

/**
 * What was written for the person who asked for it.
 *
 * @param replaced how many took the place of an older file of the same name
 * @param faults what belongs to them and could not be made
 */
public record SavedFiles(List<String> names, int replaced, List<PartFaults.PartFault> faults) {
  public SavedFiles {
    names = List.copyOf(names);
    faults = List.copyOf(faults);
  }

  /** Says it, older files that are gone included. */
  public Message message(Path folder) {
    int all = names.size();
    String where = folder.toString();
    if (all == 1) {
      return replaced == 0
          ? Message.of("project.saved-files.one", names.get(0), where)
          : Message.of("project.saved-files.one-in-place", names.get(0), where);
    }
    if (replaced == 0) {
      return Message.of("project.saved-files.many", all, where);
    }
    return replaced == all
        ? Message.of("project.saved-files.all-in-place", all, where)
        : Message.of("project.saved-files.some-in-place", all, where, replaced);
  }
}
