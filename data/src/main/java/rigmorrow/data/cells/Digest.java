package rigmorrow.data.cells;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A short name for texts, the same for the same texts in the same order only. */
final class Digest {
  private final MessageDigest sha256;

  Digest() {
    try {
      this.sha256 = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JDK has SHA-256", e);
    }
  }

  /** One more text; where it ends makes a difference. */
  void add(String text) {
    sha256.update(text.getBytes(StandardCharsets.UTF_8));
    sha256.update((byte) 0);
  }

  /**
   * The name; nothing can be added after.
   *
   * @param digits hexadecimal, at most 64
   */
  String shown(int digits) {
    return HexFormat.of().formatHex(sha256.digest()).substring(0, digits);
  }
}
