package rigmorrow.data.shotjson;

import rigmorrow.data.json.Fields;
import rigmorrow.data.json.Scalars;
import rigmorrow.data.json.Trees;
import rigmorrow.data.shot.JobDraft;
import rigmorrow.data.shot.JobField;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** Writes shot lists; the same list always gives the same text. */
public final class ShotJsonWriter {
  private ShotJsonWriter() {}

  /** The text of a shot list file. */
  public static String write(ShotList list, Trees.Notation notation) {
    Fields tree =
        new Fields()
            .whole("version", ShotJsonReader.VERSION)
            .text("date", list.date())
            .whole("days", list.days())
            .list("jobs", list.jobs(), ShotJsonWriter::job)
            .list("pins", list.pins(), ShotJsonWriter::pin)
            .texts("heldBack", list.heldBack());
    return Trees.write(tree.node(), notation);
  }

  private static Fields job(ShotJob job) {
    JobDraft draft = JobDraft.of(job);
    Fields fields = new Fields();
    for (JobField field : JobField.values()) {
      Object value = draft.get(field);
      if (value != null) {
        put(fields, field, value);
      }
    }
    return fields.map("setup", draft.setup());
  }

  private static void put(Fields fields, JobField field, Object value) {
    switch (field.type()) {
      case TEXT, TIME -> fields.text(field.key(), value);
      case WHOLE -> fields.whole(field.key(), (Integer) value);
      case NUMBER -> fields.number(field.key(), (Double) value);
      case FLAG -> flag(fields, field, (Boolean) value);
      case HEIGHT_SOURCE -> fields.text(field.key(), Scalars.word((Enum<?>) value));
    }
  }

  /** False is what a missing flag means; leaving it out keeps jobs short. */
  private static void flag(Fields fields, JobField field, boolean value) {
    if (value) {
      fields.flag(field.key(), true);
    }
  }

  private static Fields pin(Pin pin) {
    return new Fields()
        .text("job", pin.job())
        .text("rig", pin.rig())
        .whole("place", pin.place())
        .text("startsAt", pin.startsAt())
        .text("state", Scalars.word(pin.state()));
  }
}
