package hosewright.line;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The questions a job answers. The word is at once the option of a command, the key of a job file
 * and the field an error names.
 */
public enum JobField {
  TITLE("title", "TEXT", "a short name for the papers", "Barn fill from the lane hydrant"),
  FROM("from", "END", "end of the source; say what it is if you know", "2.5 NH male hydrant"),
  TO("to", "END", "end of the appliance; say what it is if you know", "1.5 NH female nozzle"),
  LENGTH("length", "LENGTH", "distance along the ground", "400 ft"),
  RISE("rise", "LENGTH", "height of the appliance above the source; negative downhill", "20 ft"),
  SLACK("slack", "PERCENT", "extra hose over the distance", "5 %"),
  FLOW("flow", "FLOW", "flow wanted at the appliance", "150 gpm"),
  NEED("need", "PRESSURE", "pressure the appliance needs at that flow", "50 psi"),
  TIP("tip", "SIZE", "tip diameter of a smooth bore nozzle", "0.875 in"),
  SOURCE_PRESSURE("source-pressure", "PRESSURE", "pressure the source holds", "150 psi"),
  STATIC("static", "PRESSURE", "hydrant pressure with nothing flowing", "80 psi"),
  RESIDUAL("residual", "PRESSURE", "hydrant pressure at the test flow", "60 psi"),
  AT("at", "FLOW", "flow of the hydrant test", "900 gpm"),
  HYDRANT_LOSS("hydrant-loss", "PRESSURE", "loss in the hydrant at the test flow", "5 psi"),
  PUMP_CURVE(
      "pump-curve",
      "POINTS",
      "pump pressures and flows from shut-off on",
      "180 psi at 0 gpm; 150 psi at 500 gpm"),
  LIFT("lift", "LENGTH", "height of the pump above the water it draws", "10 ft"),
  ALTITUDE("altitude", "LENGTH", "height of the pump above the sea, for its lift", "1,200 ft"),
  SIZE("size", "SIZE", "nominal hose size, or the several allowed", "1.75 in"),
  COUPLING_SIZE("coupling-size", "SIZE", "nominal size of the hose's couplings", "1.5 in"),
  HOSE_THREAD("hose-thread", "FAMILY", "thread or coupling family of the hose", "NH"),
  SECTION("section", "LENGTH", "the only section length to use", "50 ft"),
  LINES("lines", "COUNT", "lines laid side by side", "1"),
  OUTLETS("outlets", "COUNT", "like outlets a line starts from each, joined by a siamese", "2"),
  ATTACK_LINES(
      "attack-lines",
      "COUNT",
      "lines behind a wye at the end of length; flow and need are then of each, rise to all",
      "2"),
  ATTACK_LENGTH("attack-length", "LENGTH", "distance from the wye to each appliance", "150 ft"),
  ATTACK_SIZE("attack-size", "SIZE", "nominal size of the attack lines' hose", "1.75 in"),
  FRICTION_COEFFICIENT(
      "friction-coefficient", "C", "coefficient to use instead of the catalogue's", "15.5"),
  USE("use", "USE", "fire, water or drinking", "fire"),
  FLUID("fluid", "FLUID", "what flows", "water"),
  TEMPERATURE("temperature", "TEMPERATURE", "how warm it is", "60 F"),
  ACCESSORIES(
      "accessories",
      "LIST",
      "kinds or item numbers to add, at a station if need be",
      "wrench, valve at 150 ft"),
  BUDGET("budget", "MONEY", "the most the goods may cost, before freight and tax", "2500 USD"),
  STOCK_ONLY("stock-only", "YES", "buy nothing but what lies on the shelf", "yes"),
  DELIVER_BY("deliver-by", "YYYY-MM-DD", "day everything must be there", "2026-12-10"),
  SPARE_SECTIONS("spare-sections", "COUNT", "sections to have beyond those laid", "2"),
  SECTION_WEIGHT(
      "section-weight", "WEIGHT", "most one section may weigh empty, for the crew", "60 lb"),
  OWNED(
      "owned",
      "SECTIONS",
      "sections the buyer has: laid first, only what is missing is bought",
      "4 x 50 ft 2.5 NH tested 250 psi, 2 x 25 ft"),
  DISTRICT("district", "NAME", "fire district whose threads to compare", "Port Harlow"),
  CUSTOMER("customer", "ID", "whose terms price it", "COUNTER"),
  DATE("date", "YYYY-MM-DD", "day the prices are of", "2026-11-25");

  private final String word;
  private final String placeholder;
  private final String meaning;
  private final String example;

  JobField(String word, String placeholder, String meaning, String example) {
    this.word = word;
    this.placeholder = placeholder;
    this.meaning = meaning;
    this.example = example;
  }

  public String word() {
    return word;
  }

  public String placeholder() {
    return placeholder;
  }

  /** What the field says, in a few words. */
  public String meaning() {
    return meaning;
  }

  /** Something that may be typed there. */
  public String example() {
    return example;
  }

  public boolean required() {
    return this == FROM || this == TO || this == LENGTH || this == FLOW || this == NEED;
  }

  public static Optional<JobField> of(String word) {
    return Arrays.stream(values()).filter(field -> field.word.equals(word)).findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(JobField::word).toList();
  }
}
