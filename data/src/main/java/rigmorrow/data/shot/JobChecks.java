package rigmorrow.data.shot;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.problem.Words;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.SetupAttribute;
import rigmorrow.model.shot.Gtin;

/** Everything that can be wrong with one job, whatever file it came from. */
final class JobChecks {
  private final JobDraft draft;
  private final Floor floor;
  private final Problems problems;
  private final JobPlace place;

  JobChecks(JobDraft draft, Floor floor, Problems problems, JobPlace place) {
    this.draft = draft;
    this.floor = floor;
    this.problems = problems;
    this.place = place;
  }

  void run() {
    needed(JobField.ID);
    for (JobField field : JobField.values()) {
      bounds(field);
    }
    gtin();
    recipe();
    setup();
    together(JobField.HANGING_MASS_KG, JobField.HANGING_DROP_MM);
    together(JobField.HANGING_DROP_MM, JobField.HANGING_MASS_KG);
    needs(JobField.STANDS, JobField.HANGING_MASS_KG);
    together(JobField.VOLTS, JobField.WATTS);
    together(JobField.VOLTS, JobField.PLUG);
    needs(JobField.WATTS, JobField.VOLTS);
    needs(JobField.PLUG, JobField.VOLTS);
    needs(JobField.MUST, JobField.DUE_AT);
    sizes();
    times();
  }

  private void needed(JobField field) {
    if (!draft.given(field)) {
      note(field, field.accepted());
    }
  }

  private void bounds(JobField field) {
    Object value = draft.get(field);
    boolean wrong =
        (value instanceof String text && text.isBlank())
            || (value instanceof Number number && !field.range().holds(number.doubleValue()));
    if (wrong) {
      note(field, field.accepted());
    }
  }

  private void gtin() {
    if (!(draft.get(JobField.GTIN) instanceof String gtin)) {
      return;
    }
    if (!Gtin.rightLength(gtin)) {
      note(JobField.GTIN, "8, 12, 13 or 14 digits");
    } else if (!Gtin.valid(gtin)) {
      String body = gtin.substring(0, gtin.length() - 1);
      note(
          JobField.GTIN, "a last digit of " + Gtin.checkDigit(body) + ", or a number without slip");
    }
  }

  private void recipe() {
    if (draft.isRefused(JobField.RECIPE)) {
      return;
    }
    Object recipe = draft.get(JobField.RECIPE);
    List<String> known = floor.recipes().stream().map(Recipe::id).toList();
    if (!(recipe instanceof String id) || !known.contains(id)) {
      note(JobField.RECIPE, "a recipe of the floor: " + Words.choice(known, recipe));
    }
  }

  private void setup() {
    List<String> attributes = floor.attributes().stream().map(SetupAttribute::id).toList();
    draft
        .setup()
        .forEach(
            (id, value) -> {
              SetupAttribute attribute = floor.attribute(id).orElse(null);
              if (attribute == null) {
                note("setup." + id, value, "a setup attribute: " + Words.choice(attributes, id));
              } else if (attribute.value(value).isEmpty()) {
                List<String> values = attribute.values().stream().map(AttributeValue::id).toList();
                note("setup." + id, value, Words.choice(values, value));
              }
            });
  }

  /** A base wider than its item or a centre of mass above it is a slip, never a fact. */
  private void sizes() {
    notMoreThan(JobField.BASE_LENGTH_MM, JobField.LENGTH_MM);
    notMoreThan(JobField.BASE_WIDTH_MM, JobField.WIDTH_MM);
    notMoreThan(JobField.CENTRE_OF_MASS_HEIGHT_MM, JobField.HEIGHT_MM);
  }

  private void notMoreThan(JobField part, JobField whole) {
    if (draft.get(part) instanceof Integer some
        && draft.get(whole) instanceof Integer all
        && some > all) {
      note(part, "at most " + whole.key() + " " + all);
    }
  }

  private void times() {
    LocalDateTime arrivesAt = time(JobField.ARRIVES_AT);
    LocalDateTime leavesAt = time(JobField.LEAVES_AT);
    LocalDateTime dueAt = time(JobField.DUE_AT);
    if (arrivesAt != null && leavesAt != null && !leavesAt.isAfter(arrivesAt)) {
      note(JobField.LEAVES_AT, "a time after arrivesAt " + arrivesAt);
    }
    if (arrivesAt != null && dueAt != null && dueAt.isBefore(arrivesAt)) {
      note(JobField.DUE_AT, "a time not before arrivesAt " + arrivesAt);
    }
  }

  private @Nullable LocalDateTime time(JobField field) {
    return (LocalDateTime) draft.get(field);
  }

  /** Where the first is given, the second is asked for. */
  private void together(JobField first, JobField second) {
    if (draft.given(first) && !draft.given(second)) {
      note(second, second.accepted() + ", since " + first.key() + " is given");
    }
  }

  /** The first means nothing without the second; "false" may stand where it means nothing. */
  private void needs(JobField first, JobField second) {
    Object value = draft.get(first);
    if (value != null && !Boolean.FALSE.equals(value) && !draft.given(second)) {
      note(first, "nothing, unless " + second.key() + " is given too");
    }
  }

  private void note(JobField field, String accepted) {
    Object value = draft.get(field);
    note(field.key(), value == null ? "" : value.toString(), accepted);
  }

  private void note(String field, String value, String accepted) {
    problems.add(place.where().apply(field), place.column().apply(field), value, accepted);
  }
}
