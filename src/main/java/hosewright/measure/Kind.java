package hosewright.measure;

/** What a unit measures, with the words an error needs. */
enum Kind {
  LENGTH("a length", "length"),
  FLOW("a flow", "flow"),
  PRESSURE("a pressure", "pressure"),
  TEMPERATURE("a temperature", "temperature"),
  SPEED("a speed", "speed"),
  VOLUME("a volume", "volume"),
  WEIGHT("a weight", "weight"),
  FORCE("a force", "force"),
  FRACTION("a percentage", "percentage");

  final String withArticle;
  final String noun;

  Kind(String withArticle, String noun) {
    this.withArticle = withArticle;
    this.noun = noun;
  }
}
