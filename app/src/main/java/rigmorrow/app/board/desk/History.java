package rigmorrow.app.board.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Every state there was, and the way to the one there is. */
final class History {
  private final List<Kept> chain = new ArrayList<>();
  private final List<String> log = new ArrayList<>();
  private final List<Put> versions = new ArrayList<>();
  private int at = -1;
  private int published;

  private record Put(Version version, Kept kept) {}

  Kept now() {
    return chain.get(at);
  }

  long revision() {
    return log.size();
  }

  void keep(Kept kept) {
    while (chain.size() > at + 1) {
      chain.remove(chain.size() - 1);
    }
    chain.add(kept);
    at++;
    log.add(kept.state().sentence());
  }

  @Nullable String undoSentence() {
    return at > 0 ? now().state().sentence() : null;
  }

  @Nullable String redoSentence() {
    return at + 1 < chain.size() ? chain.get(at + 1).state().sentence() : null;
  }

  void undo() {
    log.add("Undone: " + now().state().sentence());
    at--;
    chain.set(at, now().at(revision()));
  }

  void redo() {
    at++;
    log.add("Done again: " + now().state().sentence());
    chain.set(at, now().at(revision()));
  }

  List<String> since(long revision) {
    int from = (int) Math.max(0, Math.min(revision, log.size()));
    return List.copyOf(log.subList(from, log.size()));
  }

  Version put(String note, Instant when) {
    Version version = new Version(versions.size() + 1, note, when, false);
    versions.add(new Put(version, now()));
    return version;
  }

  List<Version> versions() {
    return versions.stream()
        .map(Put::version)
        .map(one -> new Version(one.number(), one.note(), one.at(), one.number() == published))
        .toList();
  }

  @Nullable Kept version(int number) {
    return number < 1 || number > versions.size() ? null : versions.get(number - 1).kept();
  }

  void published(int number) {
    published = number;
  }
}
