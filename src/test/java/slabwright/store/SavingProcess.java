package slabwright.store;

import java.io.IOException;
import java.nio.file.Path;
import slabwright.site.Site;

/** Saves a plan again and again until it is killed, and says each time that it is done: FILE. */
final class SavingProcess {
  private SavingProcess() {}

  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0]);
    Journal journal = Journal.beside(file);
    Site site = FullSite.make();
    for (int n = 1; ; n++) {
      Site next = site.withNote("state " + n);
      journal.write(next);
      PlanFile.save(next, file);
      System.out.println(n);
      System.out.flush();
    }
  }
}
