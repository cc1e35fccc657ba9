package rigmorrow.app.explain;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.report.Json;
import rigmorrow.model.explain.Change;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.IfThen;
import rigmorrow.model.explain.JobRules;
import rigmorrow.model.explain.JobTimes;
import rigmorrow.model.explain.LateChange;
import rigmorrow.model.explain.Move;
import rigmorrow.model.explain.RigAnswer;
import rigmorrow.model.explain.Trouble;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.time.PlanClock;

/** Explanations as the documents that {@code --json} prints. Times are floor times with offset. */
public final class ExplainJson {
  private final PlanClock clock;
  private final ExplainSentences sentences;

  /**
   * @param batch that was planned
   * @param sentences of it
   */
  public ExplainJson(Batch batch, ExplainSentences sentences) {
    this.clock = PlanClock.of(batch);
    this.sentences = sentences;
  }

  /** The document about one job. */
  public ObjectNode of(Explanation answer) {
    ObjectNode document = Json.document();
    document.put("job", answer.job().id()).put("name", answer.job().name());
    document.put("status", answer.status().name());
    Json.strings(document.putArray("differing"), answer.differing());
    Json.strings(document.putArray("unmeasured"), answer.unmeasured());
    rules(document.putObject("rules"), answer.rules());
    cost(document.putObject("cost"), answer.cost());
    times(document, "times", answer.times());
    document.put("before", answer.before()).put("after", answer.after());
    ArrayNode waits = document.putArray("waits");
    answer.waits().forEach(wait -> wait(waits.addObject(), wait));
    ArrayNode rigs = document.putArray("rigs");
    answer.rigs().forEach(rig -> rig(rigs.addObject(), rig));
    ArrayNode changes = document.putArray("changes");
    answer.changes().forEach(one -> change(changes.addObject(), one));
    ArrayNode sections = document.putArray("sections");
    for (Section section : sentences.of(answer)) {
      ObjectNode node = sections.addObject().put("heading", section.heading());
      Json.strings(node.putArray("sentences"), section.sentences());
    }
    return document;
  }

  /** The document about every job that is late or left out. */
  public ObjectNode of(List<Trouble> troubles) {
    ObjectNode document = Json.document();
    ArrayNode list = document.putArray("troubles");
    for (Trouble trouble : troubles) {
      ObjectNode node = list.addObject().put("job", trouble.job().id());
      node.put("name", trouble.job().name()).put("status", trouble.status().name());
      times(node, "times", trouble.times());
      if (trouble.change() == null) {
        node.putNull("change");
      } else {
        change(node.putObject("change"), trouble.change());
      }
      node.put("placesTried", trouble.placesTried());
      move(node, "best", trouble.best());
      node.put("sentence", sentences.of(trouble));
    }
    return document;
  }

  private void rules(ObjectNode node, JobRules rules) {
    node.put("weight", rules.weight());
    node.put("arrivesAt", time(rules.arrivesAtSecond()));
    node.put("leavesAt", time(rules.leavesAtSecond()));
    node.put("dueAt", time(rules.dueAtSecond())).put("must", rules.must());
    Json.strings(node.putArray("sampleSharedWith"), rules.sampleSharedWith());
    Json.strings(node.putArray("kits"), rules.kits());
    node.put("loadPeople", rules.loadPeople()).put("unloadPeople", rules.unloadPeople());
    node.put("attendedCapture", rules.attendedCapture()).put("estimated", rules.estimated());
    Pin pin = rules.pin();
    if (pin == null) {
      node.putNull("pin");
    } else {
      node.putObject("pin")
          .put("rig", pin.rig())
          .put("place", pin.place())
          .put("startsAt", pin.startsAt() == null ? null : pin.startsAt().toString())
          .put("state", pin.state().name());
    }
  }

  private void cost(ObjectNode node, Cost cost) {
    node.put("hard", cost.hard()).put("leftOutWeight", cost.leftOutWeight());
    node.put("softPoints", cost.softPoints());
    node.put("lateWeightedSeconds", cost.lateWeightedSeconds());
    node.put("lateSeconds", cost.lateSeconds()).put("lateJobs", cost.lateJobs());
    node.put("leftOutJobs", cost.leftOutJobs());
    node.put("changeoverSeconds", cost.changeoverSeconds());
    node.put("finishedAt", time(cost.finishedAtSecond()));
  }

  private void times(ObjectNode parent, String name, @Nullable JobTimes times) {
    if (times == null) {
      parent.putNull(name);
      return;
    }
    parent
        .putObject(name)
        .put("rig", times.rig())
        .put("place", times.place())
        .put("of", times.of())
        .put("startsAt", time(times.startSecond()))
        .put("captureEndsAt", time(times.captureEndSecond()))
        .put("endsAt", time(times.endSecond()))
        .put("changeoverSeconds", times.changeoverSeconds())
        .put("lateSeconds", times.lateSeconds());
  }

  private void wait(ObjectNode node, Wait wait) {
    node.put("reason", wait.reason().name());
    Json.strings(node.putArray("kits"), wait.kits());
    Json.strings(node.putArray("kitOnRigs"), wait.rigs());
    node.put("startsAt", time(wait.span().start())).put("endsAt", time(wait.span().end()));
    node.put("seconds", wait.span().seconds());
  }

  private void rig(ObjectNode node, RigAnswer rig) {
    node.put("rig", rig.rig()).put("kind", rig.kind().name());
    Json.reasons(node.putArray("misfits"), rig.misfits());
    node.put("neededSeconds", rig.neededSeconds());
    node.put("longestOpenSeconds", rig.longestOpenSeconds());
    node.put("withoutItsPin", rig.withoutItsPin()).put("placesTried", rig.placesTried());
    move(node, "best", rig.best());
  }

  private void move(ObjectNode parent, String name, @Nullable Move move) {
    if (move == null) {
      parent.putNull(name);
      return;
    }
    ObjectNode node = parent.putObject(name);
    times(node, "times", move.times());
    cost(node.putObject("cost"), move.cost());
    node.put("standing", move.standing().name());
    ArrayNode changes = node.putArray("lateChanges");
    for (LateChange one : move.lateChanges()) {
      changes
          .addObject()
          .put("job", one.job())
          .put("beforeSeconds", one.beforeSeconds())
          .put("afterSeconds", one.afterSeconds());
    }
    Json.breaches(node.putArray("breaches"), move.breaches());
  }

  private void change(ObjectNode node, IfThen one) {
    Change change = one.change();
    node.put("kind", change.kind().name()).put("subject", change.subject());
    node.put("seconds", change.seconds()).put("helps", one.helps());
    times(node, "times", one.times());
    cost(node.putObject("cost"), one.cost());
  }

  private @Nullable String time(@Nullable Integer second) {
    return second == null ? null : DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(clock.at(second));
  }
}
