package slabwright.project.export;

import java.nio.file.Path;
import java.util.List;

/**
 * What was written for the person who asked for it.
 *
 * @param replaced how many took the place of an older file of the same name
 */
public record SavedFiles(List<String> names, int replaced) {
  /** Says it, older files that are gone included. */
  public String words(Path folder) {
    boolean one = names.size() == 1;
    return (one ? "Saved " + names.get(0) : "Saved " + names.size() + " files")
        + " in "
        + folder
        + older(one);
  }

  private String older(boolean one) {
    if (replaced == 0) {
      return "";
    }
    if (one) {
      return ", in place of an older one";
    }
    String many = replaced == names.size() ? "all" : String.valueOf(replaced);
    return ", " + many + " of them in place of " + (replaced == 1 ? "an older one" : "older ones");
  }
}
