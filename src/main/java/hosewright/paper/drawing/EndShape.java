package hosewright.paper.drawing;

import hosewright.paper.page.Picture.Disc;
import hosewright.paper.page.Picture.Line;
import hosewright.paper.page.Picture.Mark;
import hosewright.paper.page.Picture.Outline;
import hosewright.thread.CouplingSize;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.FamilyKind;
import hosewright.thread.Gender;
import hosewright.thread.ThreadDimensions;
import hosewright.thread.ThreadTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An end cut along its axis: walls, threads and gasket, as long and as wide as its figures say.
 *
 * @param diameterIn over the male's threads, between a Storz coupling's lugs, else the nominal size
 * @param pitchIn thread to thread; 0 without threads or where it is not known
 * @param drawnByFigures whether diameter and pitch are the end's own figures
 */
record EndShape(End end, double diameterIn, double pitchIn, boolean drawnByFigures) {
  /** Height of a thread of 60 degrees between its flats, in pitches (ASME B1.20.7). */
  private static final double HEIGHT_OF_PITCH = 0.6495;

  /** Taper of a pipe thread, on the radius (1 in 16 on the diameter: ASME B1.20.1, ISO 7-1). */
  private static final double TAPER_OF_RADIUS = 1 / 32.0;

  private static final double MILLIMETRES_PER_INCH = 25.4;
  private static final double METAL = 0.85;
  private static final double RUBBER = 0.25;
  private static final double STROKE = 0.8;

  static EndShape of(End end) {
    Optional<ThreadDimensions> thread = ThreadTable.find(end);
    double pitchIn = thread.map(ThreadDimensions::pitchIn).map(p -> p.orElse(0)).orElse(0.0);
    double majorIn = thread.map(t -> majorIn(t, pitchIn)).orElse(0.0);
    double lugsIn =
        CouplingSize.find(end.family(), end.sizeIn())
            .map(c -> c.lugSpacingMm().orElse(0) / MILLIMETRES_PER_INCH)
            .orElse(0.0);
    double ownIn = Math.max(majorIn, lugsIn);
    boolean held = ownIn > 0 && (pitchIn > 0 || lugsIn > 0);
    return new EndShape(end, ownIn > 0 ? ownIn : end.sizeIn() * 1.25, pitchIn, held);
  }

  /** Where only a pitch diameter is published, half a thread's height goes on each side. */
  private static double majorIn(ThreadDimensions thread, double pitchIn) {
    return thread
        .majorMaxIn()
        .orElseGet(
            () ->
                thread.male().pitchMaxIn().isPresent()
                    ? thread.male().pitchMaxIn().getAsDouble() + HEIGHT_OF_PITCH * pitchIn
                    : 0);
  }

  /** From the face back to the shoulder, inches. */
  double depthIn() {
    double least = 0.35 * diameterIn;
    return pitchIn == 0 ? least : Math.max(4, Math.ceil(least / pitchIn)) * pitchIn;
  }

  /** From the face back to where the drawing stops, inches. */
  double lengthIn() {
    return depthIn() + 0.4 * diameterIn;
  }

  /** Half the height of the drawing, inches. */
  double outerRadiusIn() {
    return 0.64 * diameterIn;
  }

  double threadHeightIn() {
    return HEIGHT_OF_PITCH * pitchIn;
  }

  private double boreRadiusIn() {
    return 0.5 * diameterIn - threadHeightIn() - 0.09 * diameterIn;
  }

  /** Where the drawing stands: the face at x, the axis at y. */
  record Place(double x, double y, double pointsPerInch, boolean facingRight) {
    double across(double inchesFromFace) {
      return x + (facingRight ? inchesFromFace : -inchesFromFace) * pointsPerInch;
    }

    double down(double radiusIn, boolean upper) {
      return y + (upper ? -radiusIn : radiusIn) * pointsPerInch;
    }
  }

  /** The end as marks; inches run negative from the face into the metal. */
  List<Mark> marks(Place place) {
    List<Mark> marks = new ArrayList<>();
    for (boolean upper : new boolean[] {true, false}) {
      List<Double> corners = new ArrayList<>();
      for (double[] corner : enters() ? entering() : receiving()) {
        corners.add(place.across(corner[0]));
        corners.add(place.down(corner[1], upper));
      }
      marks.add(new Outline(corners, STROKE, METAL));
      if (end.carriesGasket()) {
        marks.add(gasket(place, upper));
      }
      if (end.swivel()) {
        double middle = (boreRadiusIn() + outerRadiusIn()) / 2;
        double radius = 0.03 * diameterIn * place.pointsPerInch();
        marks.add(
            new Disc(
                place.across(-depthIn() - 0.06 * diameterIn),
                place.down(middle, upper),
                radius,
                STROKE,
                1));
      }
    }
    marks.add(axis(place));
    return marks;
  }

  private boolean enters() {
    return end.gender() == Gender.MALE || end.gender() == Gender.PLUG;
  }

  private List<double[]> entering() {
    List<double[]> corners = new ArrayList<>();
    double shoulder = 0.5 * diameterIn + 0.05 * diameterIn;
    corners.add(new double[] {-lengthIn(), shoulder});
    corners.add(new double[] {-depthIn(), shoulder});
    if (pitchIn > 0) {
      double root = 0.5 * diameterIn - threadHeightIn();
      for (double x = -depthIn(); x < -pitchIn / 2; x += pitchIn) {
        corners.add(new double[] {x, root - narrowing(x)});
        corners.add(new double[] {x + pitchIn / 2, root + threadHeightIn() - narrowing(x)});
      }
      corners.add(new double[] {0, root - narrowing(0)});
    } else if (end.threaded()) {
      corners.add(new double[] {-depthIn(), 0.5 * diameterIn});
      corners.add(new double[] {0, 0.5 * diameterIn});
    } else {
      groove(corners);
    }
    corners.add(new double[] {0, boreRadiusIn()});
    corners.add(new double[] {-lengthIn(), boreRadiusIn()});
    return corners;
  }

  /** What the arms or lugs of the other half hold on to. */
  private void groove(List<double[]> corners) {
    double outside = 0.5 * diameterIn;
    for (double[] corner : new double[][] {{1, 1}, {0.65, 1}, {0.6, 0.9}, {0.4, 0.9}, {0.35, 1}}) {
      corners.add(new double[] {-depthIn() * corner[0], outside * corner[1]});
    }
    corners.add(new double[] {0, outside});
  }

  private List<double[]> receiving() {
    List<double[]> corners = new ArrayList<>();
    double inside = 0.5 * diameterIn;
    corners.add(new double[] {-lengthIn(), outerRadiusIn()});
    corners.add(new double[] {0, outerRadiusIn()});
    if (end.gender() == Gender.SEXLESS) {
      corners.add(new double[] {0.08 * diameterIn, outerRadiusIn()});
      corners.add(new double[] {0.08 * diameterIn, inside});
      corners.add(new double[] {0, inside});
    } else if (pitchIn > 0) {
      corners.add(new double[] {0, inside - narrowing(-depthIn())});
      for (double x = 0; x > -depthIn() + pitchIn / 2; x -= pitchIn) {
        double narrower = narrowing(-depthIn() - x);
        corners.add(new double[] {x - pitchIn / 2, inside - threadHeightIn() - narrower});
        corners.add(new double[] {x - pitchIn, inside - narrower});
      }
    } else {
      corners.add(new double[] {0, inside});
      corners.add(new double[] {-depthIn(), inside});
    }
    double back = end.gender() == Gender.SEXLESS ? 0 : -depthIn();
    corners.add(new double[] {back, boreRadiusIn()});
    corners.add(new double[] {-lengthIn(), boreRadiusIn()});
    return corners;
  }

  /** How much a taper has taken off the radius at x, negative from the face. */
  private double narrowing(double x) {
    boolean tapers =
        Families.find(end.family()).map(f -> f.kind() == FamilyKind.TAPER_THREAD).orElse(false);
    return tapers ? (x + depthIn()) * TAPER_OF_RADIUS : 0;
  }

  private Outline gasket(Place place, boolean upper) {
    double thick = 0.05 * diameterIn;
    double back = end.gender() == Gender.SEXLESS ? -thick : -depthIn();
    double top = place.down(0.5 * diameterIn - threadHeightIn(), upper);
    double bottom = place.down(boreRadiusIn(), upper);
    double left = Math.min(place.across(back), place.across(back + thick));
    return Outline.box(
        left,
        Math.min(top, bottom),
        thick * place.pointsPerInch(),
        Math.abs(top - bottom),
        STROKE,
        RUBBER);
  }

  /** Where the gasket lies, or the middle of the threads of an end without one: for a pointer. */
  double[] sealingPlace(Place place) {
    double x =
        end.carriesGasket()
            ? (end.gender() == Gender.SEXLESS ? 0 : -depthIn() + 0.03 * diameterIn)
            : -depthIn() / 2;
    return new double[] {
      place.across(x), place.down(0.5 * diameterIn - threadHeightIn() / 2, false)
    };
  }

  private Mark axis(Place place) {
    return new Line(
        place.across(-lengthIn() - 0.1 * diameterIn),
        place.y(),
        place.across(0.06 * diameterIn),
        place.y(),
        0.4);
  }
}
