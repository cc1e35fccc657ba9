package rigmorrow.model;

import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.setup.Setup;

/** Builds recipes for tests; each call replaces one part. To begin with: strobes, 0.01 s. */
public final class RecipeBuilder {
  private final String id;
  private List<FrameRow> rows = List.of();
  private List<Still> stills = List.of();
  private double exposureSeconds = 0.01;
  private int focusBrackets = 1;
  private Lighting lighting = Lighting.STROBE;
  private Setup setup = Setup.ANY;
  private Set<String> equipment = Set.of();
  private Set<String> skills = Set.of();
  private boolean attended;
  private int backgroundMarginMm = 100;
  private Map<String, Integer> measuredCaptureSeconds = Map.of();

  public RecipeBuilder(String id) {
    this.id = id;
  }

  public RecipeBuilder rows(FrameRow... others) {
    rows = List.of(others);
    return this;
  }

  public RecipeBuilder stills(Still... others) {
    stills = List.of(others);
    return this;
  }

  public RecipeBuilder exposureSeconds(double seconds) {
    exposureSeconds = seconds;
    return this;
  }

  public RecipeBuilder focusBrackets(int brackets) {
    focusBrackets = brackets;
    return this;
  }

  public RecipeBuilder lighting(Lighting other) {
    lighting = other;
    return this;
  }

  public RecipeBuilder setup(Map<String, String> values) {
    setup = new Setup(values);
    return this;
  }

  public RecipeBuilder equipment(String... kinds) {
    equipment = Set.of(kinds);
    return this;
  }

  public RecipeBuilder skills(String... others) {
    skills = Set.of(others);
    return this;
  }

  public RecipeBuilder attended(boolean stays) {
    attended = stays;
    return this;
  }

  public RecipeBuilder backgroundMarginMm(int margin) {
    backgroundMarginMm = margin;
    return this;
  }

  public RecipeBuilder measuredCaptureSeconds(Map<String, Integer> secondsByRig) {
    measuredCaptureSeconds = secondsByRig;
    return this;
  }

  public Recipe build() {
    return new Recipe(
        id,
        id,
        rows,
        stills,
        exposureSeconds,
        focusBrackets,
        lighting,
        setup,
        equipment,
        skills,
        attended,
        backgroundMarginMm,
        measuredCaptureSeconds);
  }
}
