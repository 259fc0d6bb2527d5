package slabwright.work.coat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The batches of one coat, in order.
 *
 * @param kit mm³ of the kit they are mixed from
 * @param kits whole kits opened
 */
public record Batches(List<Batch> list, double kit, int kits) {
  public Batches {
    list = List.copyOf(list);
  }

  /**
   * One mix.
   *
   * @param mixed mm³
   * @param used mm³ that go onto the floor or are lost on the way; the last may be mixed and not
   *     all used
   * @param area mm² it does
   * @param laying how long it takes to lay where all at it cut in and roll at once
   * @param kept how long the plan's hours keep for it: one cuts in, then all roll
   */
  public record Batch(
      int number, double mixed, double used, double area, Duration laying, Duration kept) {}

  /** As few equal batches as the working time allows. */
  static Batches even(BatchParameters job, double most) {
    int count = (int) Math.max(1, Math.ceil(job.needed() / most - 1e-9));
    double each = job.needed() / count;
    List<Batch> list = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      list.add(batch(job, i, each, each));
    }
    double kit = job.kits().get(job.kits().size() - 1);
    return new Batches(list, kit, (int) Math.ceil(job.needed() / kit - 1e-9));
  }

  /** Batches of whole kits. */
  static Batches ofKits(BatchParameters job, double kit, int kitsAtOnce) {
    int kits = (int) Math.ceil(job.needed() / kit - 1e-9);
    List<Batch> list = new ArrayList<>();
    double left = job.needed();
    for (int opened = 0; opened < kits; opened += kitsAtOnce) {
      double mixed = Math.min(kitsAtOnce, kits - opened) * kit;
      double used = Math.min(mixed, left);
      list.add(batch(job, list.size() + 1, mixed, used));
      left -= used;
    }
    return new Batches(list, kit, kits);
  }

  private static Batch batch(BatchParameters job, int number, double mixed, double used) {
    double area = ProductAmount.covered(used, job.coverage(), job.loss());
    Duration laying = job.timeFor(used);
    return new Batch(number, mixed, used, area, laying, laying);
  }

  /** The same batches with what is kept for them at a pace, mm² an hour of all who lay. */
  Batches keptAt(double rate) {
    List<Batch> timed =
        list.stream()
            .map(
                b ->
                    new Batch(
                        b.number(),
                        b.mixed(),
                        b.used(),
                        b.area(),
                        b.laying(),
                        Duration.ofMillis(Math.round(b.area() / rate * 3.6e6))))
            .toList();
    return new Batches(timed, kit, kits);
  }

  /** Those of one section after the other; empty when any section is not mixed in batches. */
  static Optional<Batches> joined(List<Optional<Batches>> sections) {
    if (sections.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    List<Batch> list = new ArrayList<>();
    int kits = 0;
    for (Batches b : sections.stream().flatMap(Optional::stream).toList()) {
      for (Batch one : b.list()) {
        list.add(
            new Batch(
                list.size() + 1, one.mixed(), one.used(), one.area(), one.laying(), one.kept()));
      }
      kits += b.kits();
    }
    return Optional.of(new Batches(list, sections.get(0).orElseThrow().kit(), kits));
  }

  public double used() {
    return list.stream().mapToDouble(Batch::used).sum();
  }

  public double mixed() {
    return list.stream().mapToDouble(Batch::mixed).sum();
  }
}
