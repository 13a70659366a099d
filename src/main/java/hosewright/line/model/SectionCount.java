package hosewright.line.model;

/** So many sections of one coupled length, ft. */
public record SectionCount(double lengthFt, int count) {}
