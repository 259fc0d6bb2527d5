package slabwright.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file whole or not at all. */
public final class AtomicFile {
  private static final String PART = ".part";

  /** How bytes get onto the disk; a test lets it fail half-way. */
  interface Disk {
    void put(FileChannel out, ByteBuffer bytes) throws IOException;
  }

  private AtomicFile() {}

  /**
   * Writes beside the target, forces to disk, then moves over it.
   *
   * @throws IOException when that fails; the target is then as it was
   */
  public static void write(Path target, byte[] bytes) throws IOException {
    write(target, bytes, AtomicFile::putAll);
  }

  static void write(Path target, byte[] bytes, Disk disk) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    Path temporary = Files.createTempFile(folder, "." + target.getFileName(), PART);
    try {
      try (FileChannel out = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
        disk.put(out, ByteBuffer.wrap(bytes));
        out.force(true);
      }
      move(temporary, target);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  private static void putAll(FileChannel out, ByteBuffer bytes) throws IOException {
    while (bytes.hasRemaining()) {
      out.write(bytes);
    }
  }

  /**
   * Removes half-written files that a kill left beside a target.
   *
   * @throws IOException when one cannot be removed
   */
  static void clearUp(Path target) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      return;
    }
    String own = "." + target.getFileName();
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, "*" + PART)) {
      for (Path part : parts) {
        if (part.getFileName().toString().startsWith(own)) {
          Files.deleteIfExists(part);
        }
      }
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
