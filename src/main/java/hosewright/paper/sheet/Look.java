package hosewright.paper.sheet;

import org.apache.poi.ss.usermodel.HorizontalAlignment;

/** How a cell looks. Weight, size, rules and words carry meaning, never colour alone. */
public enum Look {
  TEXT(new Spec()),
  CENTRE(new Spec().centred()),
  STRONG(new Spec().bold()),
  INDENTED(new Spec().indented()),
  INDENTED_STRONG(new Spec().bold().indented()),
  SMALL(new Spec().size(8)),
  NOTE(new Spec().size(9)),
  SMALL_CENTRE(new Spec().centred().size(9)),
  NAME(new Spec().bold().size(16).oneLine()),
  TITLE(new Spec().bold().size(12)),
  SECTION(new Spec().bold().size(11).ruleBelow()),
  LABEL(new Spec().right().grey()),
  HEAD(new Spec().bold().shaded().boxed().indented()),
  HEAD_CENTRE(new Spec().bold().shaded().boxed().centred()),
  HEAD_RIGHT(new Spec().bold().shaded().boxed().right().indented()),
  BODY(new Spec().boxed().indented()),
  BODY_CENTRE(new Spec().boxed().centred()),
  BODY_ORDER(new Spec().boxed().centred().format("0")),
  BODY_STRONG(new Spec().boxed().bold().centred()),
  BODY_ALARM(new Spec().boxed().bold().shaded().centred()),
  BODY_COUNT(new Spec().boxed().right().indented().format("#,##0")),
  BODY_NUMBER(new Spec().boxed().right().indented().format("#,##0.00")),
  BODY_LOOSE(new Spec().boxed().right().indented().format("General")),
  BODY_MONEY(new Spec().boxed().right().indented().money()),
  BODY_INPUT(new Spec().boxed().right().indented().format("#,##0").open()),
  BODY_LOOSE_INPUT(new Spec().boxed().right().indented().format("#,##0.##;-#,##0.##;0").open()),
  COUNT(new Spec().right().indented().format("#,##0")),
  NUMBER(new Spec().right().indented().format("#,##0.00")),
  NUMBER_INPUT(new Spec().right().indented().format("General").boxed().open()),
  LONG_INPUT(new Spec().right().indented().format("#,##0.00").boxed().open()),
  PERCENT_INPUT(new Spec().right().indented().format("0.0##%").boxed().open()),
  LOOSE_STRONG(new Spec().bold().right().indented().format("General").ruleAbove()),
  NUMBER_STRONG(new Spec().bold().right().indented().format("#,##0.00").ruleAbove()),
  FINE(new Spec().right().indented().format("0.0000")),
  BODY_FINE(new Spec().boxed().right().indented().format("0.0000")),
  SCIENTIFIC(new Spec().right().indented().format("0.000E+00")),
  PERCENT(new Spec().right().indented().format("0.0##%")),
  MONEY(new Spec().right().indented().money()),
  MONEY_STRONG(new Spec().bold().right().indented().size(11).money().ruleAbove()),
  TOTAL_LABEL(new Spec().bold().right().size(11).ruleAbove()),
  BANNER_TOTAL(new Spec().bold().right().size(11).banner()),
  SIGN(new Spec().ruleBelow()),
  BOX(new Spec().boxed());

  final Spec spec;

  Look(Spec spec) {
    this.spec = spec;
  }

  /** What a look is made of. */
  static final class Spec {
    boolean bold;
    boolean grey;
    boolean shaded;
    boolean boxed;
    boolean ruleAbove;
    boolean ruleBelow;
    boolean open;
    boolean money;
    boolean banner;
    boolean wrapped = true;
    boolean figures;
    int indent;
    int sizePt = 10;
    String format = "General";
    HorizontalAlignment alignment = HorizontalAlignment.GENERAL;

    Spec bold() {
      bold = true;
      return this;
    }

    Spec grey() {
      grey = true;
      return this;
    }

    Spec shaded() {
      shaded = true;
      return this;
    }

    Spec boxed() {
      boxed = true;
      return this;
    }

    Spec ruleAbove() {
      ruleAbove = true;
      return this;
    }

    Spec ruleBelow() {
      ruleBelow = true;
      return this;
    }

    /** A cell the reader may change while the sheet is protected. */
    Spec open() {
      open = true;
      return this;
    }

    Spec money() {
      money = true;
      return numeric();
    }

    Spec banner() {
      banner = true;
      return numeric();
    }

    /** Keeps text clear of its neighbour. */
    Spec indented() {
      indent = 1;
      return alignment == HorizontalAlignment.GENERAL ? left() : this;
    }

    Spec size(int points) {
      sizePt = points;
      return this;
    }

    Spec oneLine() {
      wrapped = false;
      return this;
    }

    Spec format(String pattern) {
      format = pattern;
      return numeric();
    }

    Spec left() {
      alignment = HorizontalAlignment.LEFT;
      return this;
    }

    Spec right() {
      alignment = HorizontalAlignment.RIGHT;
      return this;
    }

    Spec centred() {
      alignment = HorizontalAlignment.CENTER;
      return this;
    }

    /** Numbers never wrap: a number too wide must show as such, not as two numbers. */
    private Spec numeric() {
      wrapped = false;
      figures = true;
      return this;
    }
  }
}
