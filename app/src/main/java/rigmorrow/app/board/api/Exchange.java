package rigmorrow.app.board.api;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;

/** Reads requests and writes answers, within limits. */
public final class Exchange {
  /** The largest body in JSON. */
  public static final int MOST_JSON_BYTES = 1_000_000;

  private static final int BUFFER_BYTES = 64 * 1024;

  private Exchange() {}

  /**
   * The body as a record.
   *
   * @throws Refusal when it is of another kind, too large, or not as described
   */
  public static <T> T body(Context context, Class<T> type) {
    String kind = context.contentType();
    String plain = kind == null ? "" : kind.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    if (!plain.equals(Answer.JSON)) {
      throw Refusal.of(415, "The body is " + shown(plain) + "; accepted: " + Answer.JSON + ".");
    }
    return Bodies.read(bytes(context, MOST_JSON_BYTES), type);
  }

  /**
   * The body as bytes.
   *
   * @throws Refusal when it is too large
   */
  public static byte[] bytes(Context context, int most) {
    if (context.req().getContentLengthLong() > most) {
      throw tooLarge(most);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    byte[] buffer = new byte[BUFFER_BYTES];
    try {
      InputStream in = context.req().getInputStream();
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        bytes.write(buffer, 0, read);
        if (bytes.size() > most) {
          throw tooLarge(most);
        }
      }
    } catch (IOException e) {
      throw Refusal.malformed("The body did not arrive whole.");
    }
    return bytes.toByteArray();
  }

  /** Answers a record as JSON. */
  public static void answer(Context context, Object view) {
    answer(context, 200, view);
  }

  /** Answers a record as JSON with a status. */
  public static void answer(Context context, int status, Object view) {
    context.status(status).contentType(Answer.JSON).result(BoardJson.bytes(view));
  }

  /**
   * A number of a path or query.
   *
   * @throws Refusal when it is none, or below 0
   */
  public static int number(String name, String text) {
    if (!text.matches("[0-9]{1,9}")) {
      throw Refusal.malformed(
          name + " is " + shown(text) + "; accepted: a whole number from 0 on.");
    }
    return Integer.parseInt(text);
  }

  private static Refusal tooLarge(int most) {
    return Refusal.of(413, "The body is too large; accepted: at most " + most + " bytes.");
  }

  private static String shown(String text) {
    int longest = 60;
    return text.isEmpty()
        ? "not named"
        : "'" + text.substring(0, Math.min(text.length(), longest)) + "'";
  }
}
