package rigmorrow.benchmarks.textbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.regex.Pattern;

/** Reads a file word by word, as the files of the literature are made. */
final class Numerals {
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private final Path file;
  private final Iterator<String> words;

  /**
   * @throws IOException when the file cannot be read
   */
  Numerals(Path file) throws IOException {
    this.file = file;
    String text = Files.readString(file, StandardCharsets.ISO_8859_1);
    this.words = List.of(BLANKS.split(text.strip())).iterator();
  }

  /** Passes over everything up to and with a word. */
  void skipPast(String word) throws IOException {
    while (!word().equals(word)) {
      // Each word is one step nearer.
    }
  }

  /** The next word. */
  String word() throws IOException {
    try {
      return words.next();
    } catch (NoSuchElementException e) {
      throw new IOException(file + " ends too soon", e);
    }
  }

  /** The next word as a whole number. */
  int whole() throws IOException {
    String word = word();
    try {
      return Integer.parseInt(word);
    } catch (NumberFormatException e) {
      throw new IOException(file + ": '" + word + "' is no whole number", e);
    }
  }

  /** The next words as whole numbers. */
  int[] wholes(int count) throws IOException {
    int[] numbers = new int[count];
    for (int i = 0; i < count; i++) {
      numbers[i] = whole();
    }
    return numbers;
  }
}
