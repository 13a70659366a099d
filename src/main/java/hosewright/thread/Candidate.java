package hosewright.thread;

/**
 * An end that a measured male may be.
 *
 * @param end the end, by its nominal size
 * @param majorDiameterIn what a new one measures across, at most
 * @param differenceIn measured diameter less that figure; below zero when it reads small
 * @param threadsPerInch its threads per inch
 * @param likelihood its share among all candidates and "none of these", 0 to 1
 */
public record Candidate(
    End end,
    double majorDiameterIn,
    double differenceIn,
    double threadsPerInch,
    double likelihood) {

  ThreadDimensions dimensions() {
    return ThreadTable.find(end).orElseThrow();
  }
}
