package slabwright.fuzz;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import slabwright.units.Message;
import slabwright.words.Words;

/**
 * Feeds spoilt inputs to one way into the program. Each must be taken or refused in clear
 * sentences; anything thrown is a failure, and so is more than five seconds of computing.
 */
final class FuzzRun {
  private static final long MOST_NANOS = TimeUnit.SECONDS.toNanos(5);
  private static final int LONGEST_SENTENCE = 900;
  private static final Pattern OURS_ALONE =
      Pattern.compile(
          "Message\\[|Refusal\\[|\\w+Exception|\\bjava\\.|slabwright\\.|org\\.|\\{\\d"
              + "|[\\x00-\\x1f]");

  /** What went wrong with the input of a seed. */
  record Failure(long seed, String what) {
    @Override
    public String toString() {
      return "seed " + seed + ": " + what;
    }
  }

  private final FuzzTarget target;
  private final Words words = Words.english();
  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private SynchronousQueue<Long> seeds = new SynchronousQueue<>();
  private SynchronousQueue<String> said = new SynchronousQueue<>();
  private Thread worker;

  /** Read in place of a seed's input when the seed is below 0; set before a seed is handed over. */
  private volatile byte[] given = {};

  FuzzRun(FuzzTarget target) {
    this.target = target;
    this.worker = start();
  }

  /** Those of the seeds from {@code first} whose input fails. */
  List<Failure> failures(long first, int count) throws InterruptedException {
    List<Failure> all = new ArrayList<>();
    for (long seed = first; seed < first + count; seed++) {
      String what = failure(seed);
      if (!what.isEmpty()) {
        all.add(new Failure(seed, what));
      }
    }
    worker.interrupt();
    return all;
  }

  /** What is wrong with how one input is dealt with; empty when nothing is. */
  String failure(byte[] input) throws InterruptedException {
    given = input;
    String what = failure(-1);
    worker.interrupt();
    return what;
  }

  private Thread start() {
    SynchronousQueue<Long> in = seeds;
    SynchronousQueue<String> out = said;
    Thread t =
        new Thread(
            () -> {
              try {
                while (true) {
                  out.put(outcome(in.take()));
                }
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            },
            "fuzz");
    t.setDaemon(true);
    t.start();
    return t;
  }

  /** Empty when the input of this seed is dealt with as it should be. */
  private String failure(long seed) throws InterruptedException {
    long before = threads.getThreadCpuTime(worker.getId());
    seeds.put(seed);
    while (true) {
      String what = said.poll(200, TimeUnit.MILLISECONDS);
      if (what != null) {
        return what;
      }
      if (threads.getThreadCpuTime(worker.getId()) - before > MOST_NANOS) {
        String where = frames(worker.getStackTrace());
        seeds = new SynchronousQueue<>();
        said = new SynchronousQueue<>();
        worker = start();
        return "longer than five seconds, in " + where;
      }
    }
  }

  /** Whatever is thrown is what is looked for, errors included: none may reach a person. */
  private String outcome(long seed) {
    try {
      List<Message> refused = target.read(seed < 0 ? given : target.input(new Random(seed)));
      return refused.stream()
          .map(words::say)
          .map(FuzzRun::fault)
          .filter(f -> !f.isEmpty())
          .findFirst()
          .orElse("");
    } catch (IOException | RuntimeException | Error e) {
      return e + " at " + frames(e.getStackTrace());
    }
  }

  private static String frames(StackTraceElement[] stack) {
    List<String> lines = Arrays.stream(stack).map(String::valueOf).toList();
    List<String> ours = lines.stream().filter(l -> l.startsWith("slabwright")).toList();
    return lines.stream().limit(4).toList() + " … " + ours.stream().limit(8).toList();
  }

  /** What is wrong with a sentence for a person; empty when nothing is. */
  static String fault(String sentence) {
    if (sentence.isBlank() || sentence.length() > LONGEST_SENTENCE) {
      return "a sentence of "
          + sentence.length()
          + " characters: "
          + sentence.substring(0, Math.min(200, sentence.length()));
    }
    String own = sentence.replaceAll("\"[^\n]*\"", "");
    return OURS_ALONE.matcher(own).find() ? "not for a person: " + sentence : "";
  }
}
