package slabwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.site.rules.InlaySpecRules;
import slabwright.units.Message;
import slabwright.units.Refusal;

/**
 * The graphics a plan names, found inside its folder only; links are followed before that is
 * judged.
 */
public final class GraphicFiles {
  private GraphicFiles() {}

  /** Every graphic that is missing or lies outside, with its place in the plan. */
  static List<Refusal> check(Site site, Path plan) {
    List<Refusal> out = new ArrayList<>();
    for (int a = 0; a < site.areas().size(); a++) {
      FloorArea area = site.areas().get(a);
      for (int i = 0; i < area.inlays().size(); i++) {
        String place = "areas[" + a + "].inlays[" + i + "].graphic";
        problem(plan, area.inlays().get(i).graphic(), place)
            .ifPresent(why -> out.add(Refusal.at(place, why)));
      }
    }
    return out;
  }

  private static Optional<Message> problem(Path plan, String graphic, String place) {
    Optional<Message> outside =
        Optional.of(Message.of("store.graphic-files.the-graphic-lies-outside-the", place, graphic));
    if (!InlaySpecRules.staysInside(graphic)) {
      return outside;
    }
    try {
      Path folder = plan.toAbsolutePath().getParent().toRealPath();
      Path file = folder.resolve(graphic);
      if (!Files.isRegularFile(file)) {
        return Optional.of(
            Message.of("store.graphic-files.there-is-no-graphic-in", place, graphic));
      }
      return file.toRealPath().startsWith(folder) ? Optional.empty() : outside;
    } catch (IOException | InvalidPathException e) {
      return Optional.of(
          Message.of("store.graphic-files.the-graphic-cannot-be-opened", place, graphic));
    }
  }

  /** The file of a graphic named by a plan. */
  public static Path file(Path plan, String graphic) {
    return plan.toAbsolutePath().getParent().resolve(graphic);
  }

  /**
   * Whether an inlay's graphic on disk is not the one that was accepted, or can't be read. One that
   * was never accepted has not changed.
   */
  public static boolean isChanged(Inlay inlay, Path plan) {
    if (inlay.accepted().isEmpty()) {
      return false;
    }
    try {
      return !hash(file(plan, inlay.graphic())).equals(inlay.accepted());
    } catch (IOException e) {
      return true;
    }
  }

  /**
   * SHA-256 of a file, hex.
   *
   * @throws IOException when it can't be read
   */
  public static String hash(Path file) throws IOException {
    return hash(Files.readAllBytes(file));
  }

  static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
