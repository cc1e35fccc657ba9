package rigmorrow.app.board.server;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import rigmorrow.app.board.api.Refusal;

/**
 * The files of the page. All are read when the server starts; a request only names one of them, so
 * that no path from a browser ever gets to a file system.
 */
final class PageFiles {
  private static final String INDEX = "index.html";
  private static final String HOME = "/rigmorrow/app/board/page/";
  private static final int NOT_CHANGED = 304;

  private static final Map<String, String> KINDS =
      Map.of(
          "html", "text/html; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "mjs", "text/javascript; charset=utf-8",
          "json", "application/json",
          "svg", "image/svg+xml",
          "png", "image/png",
          "woff2", "font/woff2",
          "ttf", "font/ttf",
          "txt", "text/plain; charset=utf-8");

  private final Map<String, PageFile> files;

  private record PageFile(String kind, byte[] bytes, String tag) {}

  private PageFiles(Map<String, PageFile> files) {
    this.files = Map.copyOf(files);
  }

  /**
   * Reads every file.
   *
   * @throws UncheckedIOException when that fails, a fault of ours
   */
  static PageFiles read() {
    URL index = Objects.requireNonNull(PageFiles.class.getResource(HOME + INDEX), HOME + INDEX);
    try {
      URI uri = index.toURI();
      if (!uri.getScheme().equals("jar")) {
        return new PageFiles(files(Objects.requireNonNull(Path.of(uri).getParent())));
      }
      try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
        return new PageFiles(files(jar.getPath(HOME)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Map<String, PageFile> files(Path folder) throws IOException {
    Map<String, PageFile> files = new HashMap<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path path : walk.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(path).toString().replace('\\', '/');
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        String kind = KINDS.get(ending);
        if (kind != null) {
          byte[] bytes = Files.readAllBytes(path);
          files.put(name, new PageFile(kind, bytes, tag(bytes)));
        }
      }
    }
    return files;
  }

  /** The page itself. */
  void index(Context context) {
    send(context, INDEX);
  }

  /** One of its files. */
  void file(Context context) {
    send(context, context.pathParam("name"));
  }

  private void send(Context context, String name) {
    PageFile file = files.get(name);
    if (file == null) {
      throw Refusal.unknown("The page has no such file.");
    }
    context.header("Cache-Control", "no-cache").header("ETag", file.tag());
    if (file.tag().equals(context.header("If-None-Match"))) {
      context.status(NOT_CHANGED);
      return;
    }
    context.contentType(file.kind()).result(file.bytes());
  }

  private static String tag(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return "\"" + HexFormat.of().formatHex(digest, 0, 16) + "\"";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JDK has SHA-256", e);
    }
  }
}
