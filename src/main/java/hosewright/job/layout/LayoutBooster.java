package hosewright.job.layout;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pump that is to be bought and set where one leg ends and another begins.
 *
 * @param name what papers call it
 * @param item its item number; empty for any that does
 * @param leastIntakePsi what its intake must keep while it flows, psi
 * @param reliefPsi setting of its relief valve, psi; empty for the most it may give
 */
public record LayoutBooster(
    String name, Optional<String> item, double leastIntakePsi, OptionalDouble reliefPsi) {}
