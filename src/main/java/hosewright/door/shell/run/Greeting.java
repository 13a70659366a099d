package hosewright.door.shell.run;

/**
 * What the shell says to somebody who has no data folder yet.
 *
 * @param firstTime at most ten lines, with the next thing to type
 */
public record Greeting(String firstTime) {}
