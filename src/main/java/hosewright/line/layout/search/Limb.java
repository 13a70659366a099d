package hosewright.line.layout.search;

/** A leg laid one way, with all behind it. */
record Limb(LaidLeg leg, Sum sum) {}
