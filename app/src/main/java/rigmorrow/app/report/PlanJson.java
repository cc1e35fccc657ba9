package rigmorrow.app.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import rigmorrow.data.plan.PlanJsonWriter;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.shot.Batch;

/** A plan as the document that {@code --json} prints: the plan file, and what it comes to. */
public final class PlanJson {
  private PlanJson() {}

  /**
   * The document.
   *
   * @param dispatch what dispatch rules alone came to
   */
  public static ObjectNode of(Batch batch, Plan plan, PlanFigures dispatch) {
    ObjectNode document = Json.document();
    document.setAll(planFile(plan));
    document.put("version", Json.VERSION);
    // The plan file leaves empty lists out; who reads this document may count on them.
    document.withArray("leftOut");
    document.withArray("rigs").forEach(rig -> ((ObjectNode) rig).withArray("jobs"));
    ArrayNode crew = document.putArray("crew");
    for (CrewLoad load : CrewLoad.of(batch, plan)) {
      crew.addObject()
          .put("operator", load.operator())
          .put("name", load.name())
          .put("handsOnSeconds", load.handsOnSeconds())
          .put("shiftSeconds", load.shiftSeconds());
    }
    document
        .putObject("dispatch")
        .put("leftOutPoints", dispatch.leftOutPoints())
        .put("latenessPoints", dispatch.latenessPoints())
        .put("changeoverPoints", dispatch.changeoverPoints())
        .put("finishingPoints", dispatch.finishingPoints())
        .put("softPoints", dispatch.softPoints());
    document.put("advice", PlanText.ADVICE);
    return document;
  }

  private static ObjectNode planFile(Plan plan) {
    try {
      return (ObjectNode) new ObjectMapper().readTree(PlanJsonWriter.write(plan));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the plan file is no JSON", e);
    }
  }
}
