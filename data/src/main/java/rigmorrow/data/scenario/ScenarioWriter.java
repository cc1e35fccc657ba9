package rigmorrow.data.scenario;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.floor.FloorParts;
import rigmorrow.data.json.Fields;
import rigmorrow.data.json.Scalars;
import rigmorrow.data.json.Trees;
import rigmorrow.model.money.Investment;
import rigmorrow.model.scenario.DemandChange;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.scenario.Study;

/** Writes scenario files. Every purchase states its own interest. */
public final class ScenarioWriter {
  private ScenarioWriter() {}

  /**
   * The text of the file.
   *
   * @param interestPercent for purchases that somebody adds without one
   */
  public static String write(Study study, double interestPercent, Trees.Notation notation) {
    Fields file =
        new Fields()
            .whole("version", ScenarioReader.VERSION)
            .text("name", study.name())
            .object(
                "money",
                new Fields()
                    .whole("workingDaysPerYear", study.terms().workingDaysPerYear())
                    .number("interestPercent", interestPercent)
                    .text("crewPaid", Scalars.word(study.terms().pay())))
            .list("scenarios", study.scenarios(), ScenarioWriter::scenario)
            .object("prices", prices(study.prices()))
            .texts("assumptions", study.assumptions());
    return Trees.write(file.node(), notation);
  }

  private static Fields scenario(Scenario scenario) {
    return new Fields()
        .text("name", scenario.name())
        .text("title", scenario.title())
        .object("purchase", purchase(new Fields(), scenario.purchase()))
        .list("changes", scenario.changes(), ScenarioWriter::change);
  }

  private static @Nullable Fields purchase(Fields fields, @Nullable Investment purchase) {
    if (purchase == null) {
      return null;
    }
    return fields
        .number("price", purchase.price())
        .whole("lifeYears", purchase.lifeYears())
        .number("interestPercent", purchase.interestPercent())
        .number("runningPerYear", purchase.runningPerYear());
  }

  private static Fields prices(Study.Prices prices) {
    return new Fields()
        .list("rigs", List.copyOf(new TreeMap<>(prices.rigs()).entrySet()), ScenarioWriter::price)
        .list("kits", List.copyOf(new TreeMap<>(prices.kits()).entrySet()), ScenarioWriter::price);
  }

  private static Fields price(Map.Entry<String, Investment> thing) {
    Fields fields = new Fields().text("id", thing.getKey());
    purchase(fields, thing.getValue());
    return fields;
  }

  private static Fields change(ScenarioChange change) {
    if (change instanceof DemandChange.MoreJobs more) {
      return in(
          "moreJobs", new Fields().number("percent", more.percent()).large("seed", more.seed()));
    }
    if (change instanceof DemandChange.Mix mix) {
      Fields factors = new Fields();
      mix.factors().forEach(factors::number);
      return in("mix", new Fields().object("factors", factors).large("seed", mix.seed()));
    }
    return floor((FloorChange) change);
  }

  private static Fields floor(FloorChange change) {
    if (change instanceof FloorChange.RigLike like) {
      return in("addRigLike", like(like.like(), like.id(), like.name()));
    }
    if (change instanceof FloorChange.NewRig more) {
      return in("addRig", FloorParts.fields(more.rig()));
    }
    if (change instanceof FloorChange.RigGone gone) {
      return in("removeRig", new Fields().text("rig", gone.rig()));
    }
    if (change instanceof FloorChange.OperatorLike like) {
      return in("addOperatorLike", like(like.like(), like.id(), like.name()));
    }
    if (change instanceof FloorChange.MoreSkills more) {
      return in(
          "addSkills",
          new Fields().text("operator", more.operator()).words("skills", more.skills()));
    }
    if (change instanceof FloorChange.MoreUnits more) {
      return in(
          "addKitUnits",
          new Fields()
              .text("kit", more.kit())
              .whole("units", more.units())
              .text("place", more.place()));
    }
    return times(change);
  }

  private static Fields times(FloorChange change) {
    if (change instanceof FloorChange.LongerHours longer) {
      return in(
          "longerHours",
          new Fields()
              .texts("rigs", longer.rigs())
              .texts("operators", longer.operators())
              .whole("earlierMinutes", longer.earlierMinutes())
              .whole("laterMinutes", longer.laterMinutes())
              .flag("regularTime", longer.regularTime()));
    }
    if (change instanceof FloorChange.SecondShift second) {
      return in(
          "secondShift",
          new Fields()
              .texts("rigs", second.rigs())
              .texts("operators", second.operators())
              .object("hours", FloorParts.fields(second.hours()))
              .list("breaks", second.breaks(), FloorParts::fields));
    }
    if (change instanceof FloorChange.StrobeRecycle strobes) {
      return in(
          "strobeRecycle",
          new Fields()
              .texts("rigs", strobes.rigs())
              .number("seconds", strobes.seconds())
              .number("factor", strobes.factor()));
    }
    FloorChange.ChangeoverTimes times = (FloorChange.ChangeoverTimes) change;
    return in(
        "changeoverTimes",
        new Fields()
            .text("attribute", times.attribute())
            .texts("rigs", times.rigs())
            .text("from", times.from())
            .text("to", times.to())
            .whole("seconds", times.seconds())
            .number("factor", times.factor()));
  }

  private static Fields like(String like, String id, String name) {
    return new Fields().text("like", like).text("id", id).text("name", name);
  }

  private static Fields in(String kind, Fields fields) {
    return new Fields().object(kind, fields);
  }
}
